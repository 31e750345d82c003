import { readFileSync } from "node:fs";
import { join } from "node:path";
import { type Job, pinsOf, presentParts, presentWires } from "../../engine/job/index.ts";
import {
  type OperateRequest,
  type OperateSolution,
  operateJob,
} from "../../engine/operate/index.ts";
import { mirrored } from "../../engine/operate/mirrorJobForTests.ts";
import { type Conductors, conductorsOf, routeJob } from "../../engine/route/index.ts";

export interface Machine {
  readonly name: string;
  readonly job: Job;
  readonly conductors: Conductors;
}

export interface Drawn {
  readonly machine: Machine;
  readonly request: OperateRequest;
  readonly relays: "settled" | "live";
}

const ROOT = join(import.meta.dirname, "../..");
const DEMOS = ["accessory-five-wires", "brenzach-twin", "minazuru-four", "orivesta-enduro"];

/** The demo machines, each with its mirror image of the other earth, and reference machine A (6 V, positive earth). */
export function machines(): readonly Machine[] {
  const read = (path: string): Job => JSON.parse(readFileSync(join(ROOT, path), "utf8"));
  const jobs = DEMOS.flatMap((name) => {
    const job = read(`demos/${name}.json`);
    return [
      { name, job },
      { name: `${name} mirrored`, job: mirrored(job, { polarised: true }) },
    ];
  });
  const reference = { name: "reference A", job: read("cases/reference-machines/a/job.json") };
  return [...jobs, reference].map(({ name, job }) => ({
    name,
    job,
    conductors: conductorsOf(job, routeJob(job)),
  }));
}

/** Numbers in [0, 1) that depend on the seed alone (Mulberry32). */
export function seededRatios(seed: number): () => number {
  let word = seed >>> 0;
  return () => {
    word = (word + 0x6d2b79f5) >>> 0;
    let t = word;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 2 ** 32;
  };
}

type Positions = Readonly<Record<string, string>>;

/** State number `count` of a seed's row: machines and kinds of fault take turns, everything else is drawn. */
export function drawState(all: readonly Machine[], count: number, ratio: () => number): Drawn {
  const machine = all[count % all.length]!;
  const named = machine.job.states.map(({ positions }) => positions);
  const fault = Math.floor(count / all.length) % 4;
  return drawNear(machine, ratio() < 0.5 ? named : [], { fault, movedRatio: 0.3, ratio });
}

/** A state near one of some positions, with a fault: 0 none, 1 a short, 2 something open, 3 added resistance. */
export function drawNear(
  machine: Machine,
  bases: readonly Positions[],
  draw: { readonly fault: number; readonly movedRatio: number; readonly ratio: () => number },
): Drawn {
  const { job } = machine;
  const { fault, movedRatio, ratio } = draw;
  const pick = <T>(items: readonly T[]): T => items[Math.floor(ratio() * items.length)]!;
  const pins = [...pinsOf(job).values()]
    .filter(({ ownerKind, pinId }) => ownerKind !== "body" || pinId !== "hub")
    .map(({ ref }) => ref);
  const wires = presentWires(job).map(({ id }) => id);
  const moved = presentParts(job)
    .filter((part) => part.kind === "switch")
    .filter(() => ratio() < movedRatio)
    .map((part) => [part.id, pick(part.positions).id]);
  const isRunning = ratio() < 0.5;
  const ohm = 10 ** (-3 + 3 * ratio());
  return {
    machine,
    relays: ratio() < 0.7 ? "live" : "settled",
    request: {
      set: { ...(bases.length > 0 ? pick(bases) : {}), ...Object.fromEntries(moved) },
      flash: ratio() < 0.5 ? "on" : "off",
      engine: isRunning
        ? { mode: "running", speedRpm: 1000 + Math.floor(ratio() * 6000) }
        : { mode: "stopped" },
      ...(fault === 1 && { short: [{ a: pick(pins), ohm }] }),
      ...(fault === 2 && { open: [ratio() < 0.5 ? pick(wires) : pick(pins)] }),
      ...(fault === 3 && { extraOhm: { [pick(wires)]: ohm }, aged: ratio() < 0.5 }),
    },
  };
}

/** A junction carrying this conducts, A. */
export const CONDUCTING_A = 1e-3;

/** Positions of the machine's named states in which some diode conducts. */
export function conductingBases({ job, conductors }: Machine): readonly Positions[] {
  return job.states
    .map(({ positions }) => positions)
    .filter((set) => {
      const answer = operateJob(job, conductors, { set });
      if (!answer.ok) throw new Error(`refused: ${JSON.stringify(set)}`);
      return conducts(answer.solution);
    });
}

export const conducts = ({ elements }: Pick<OperateSolution, "elements">): boolean =>
  elements.some(({ kind, currentA }) => kind === "diode" && currentA > CONDUCTING_A);
