import { type Job, loadsOf, presentParts } from "../job/index.ts";
import { compileNetwork, type Law, settleInPlace } from "../network/index.ts";
import {
  buildJobNetwork,
  type Conditions,
  conditionsOf,
  type JobElement,
  restPositions,
  stateTranslator,
} from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { DesignState } from "./designStates.ts";

/** Share of its resistance every wire and contact keeps, so that loads see all but some millivolts of the supply. */
const LOSSLESS_RATIO = 2e-3;
/** No less than this, Ω, or less than what it has: smaller would drown the balance of currents in rounding. */
const LEAST_OHM = 3e-5;

/** The job as a network in which nothing is lost on the way: the largest currents its loads can draw. */
export interface DesignNetwork {
  readonly elements: readonly JobElement[];
  /** Elements of loads, by place. */
  readonly loadAt: ReadonlyMap<number, string>;
  /** Elements of wires and fly leads, by place. */
  readonly conductorAt: ReadonlyMap<number, string>;
  /** Elements of batteries, by place. */
  readonly batteryAt: ReadonlySet<number>;
  /** Null where the state does not settle. A state asked for again is not solved again. */
  readonly solve: (state: DesignState) => DesignSolution | null;
}

export interface DesignSolution {
  /** Current of every element, A, from its first to its second node. */
  readonly elementA: Float64Array;
  readonly nodeV: Float64Array;
  /** What the battery gives, A. */
  readonly drawnA: number;
}

/**
 * Compiles a job for design currents, which no choice of wire can exceed. Rings still share their current as their real
 * resistances would.
 *
 * @param supply  "charging": the battery post held at the highest volts the regulator makes, and wires, joints, bonds,
 *                fuses and contacts at a five-hundredth of their resistance. "cranking": a full battery behind its own
 *                resistance, and only the wires without loss, because contacts limit a starter whatever the cable.
 */
export function designNetwork(
  job: Job,
  conductors: Conductors,
  supply: "charging" | "cranking",
): DesignNetwork {
  const jobNetwork = buildJobNetwork(job, conductors, { conditions: conditionsFor(job, supply) });
  const { elements, network } = jobNetwork;
  const loads = new Set(loadsOf(job).map(({ ref }) => ref));
  const isLoss = ({ kind, of }: JobElement): boolean =>
    kind === "wire" || (supply === "charging" && LOSS_KINDS.has(kind) && !loads.has(of));
  const lossless = compileNetwork({
    ...network,
    branches: network.branches.map((branch, k) => ({
      ...branch,
      law: isLoss(elements[k]!) ? lessLaw(branch.law) : branch.law,
    })),
  });
  const networkState = stateTranslator(job, jobNetwork);
  const batteryAt = placesOf(elements, ({ kind, of }) => (kind === "emf" ? of : null));
  const solve = (state: DesignState): DesignSolution | null => {
    const { overrides, relays } = networkState(state);
    const lossFree = relays.map((relay) => ({
      ...relay,
      closedOhm: supply === "charging" ? lessOhm(relay.closedOhm) : relay.closedOhm,
    }));
    const held = relays.map((relay) => relay.held);
    const settled = settleInPlace(lossless, lossFree, held, { overrides });
    if (!settled.converged || !settled.settled) return null;
    // Only volts and currents are wanted, so the slopes a whole solution holds are not made.
    const elementA = lossless.work.branchA.slice(0, elements.length);
    const nodeV = new Float64Array(network.nodeCount);
    const { nodeAtPosition, unknownCount } = lossless.pattern;
    for (let j = 0; j < unknownCount; j++) nodeV[nodeAtPosition[j]!] = lossless.work.positionV[j]!;
    const drawnA = [...batteryAt.keys()].reduce(
      (most, k) => Math.max(most, Math.abs(elementA[k]!)),
      0,
    );
    return { elementA, nodeV, drawnA };
  };
  return {
    elements,
    loadAt: placesOf(elements, ({ of }) => (loads.has(of) ? of : null)),
    conductorAt: placesOf(elements, ({ kind, of }) => (kind === "wire" ? of : null)),
    batteryAt: new Set(batteryAt.keys()),
    solve: solvedOnce(job, solve, flashing(elements)),
  };
}

/** Whether the flash makes a difference: the flasher's contact carries something, A. */
function flashing(elements: readonly JobElement[]): (solution: DesignSolution) => boolean {
  const contacts = elements.flatMap(({ role }, k) => (role.role === "flasher" ? [k] : []));
  return ({ elementA }) => contacts.some((k) => Math.abs(elementA[k]!) > LEAK_A);
}

/** More than any open contact lets through, A. */
const LEAK_A = 1e-6;

/** Keeps answers by what the network sees of a state: where every switch stands, and the flash. */
function solvedOnce(
  job: Job,
  solve: (state: DesignState) => DesignSolution | null,
  flashes: (solution: DesignSolution) => boolean,
): (state: DesignState) => DesignSolution | null {
  const switches = presentParts(job).flatMap(({ kind, id }) => (kind === "switch" ? [id] : []));
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  };
  const known = new Map<string, DesignSolution | null>();
  return (state) => {
    const atRest = rest[state.engine.mode];
    const stands = switches.map((id) => state.positions[id] ?? atRest[id]);
    const key = `${state.flash} ${stands.join(" ")}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const lit = state.flash === "off" ? known.get(`on ${stands.join(" ")}`) : undefined;
    if (lit && !flashes(lit)) return lit;
    const solution = solve(state);
    known.set(key, solution);
    return solution;
  };
}

function conditionsFor(job: Job, supply: "charging" | "cranking"): Conditions {
  if (supply === "cranking") return conditionsOf(job, { battery: "full" });
  const emfV = designV(job);
  return conditionsOf(job, { battery: { emfV, internalOhm: LEAST_OHM } });
}

/** Highest volts a healthy supply holds at the battery, V: what the regulator is set to, else the usual setting. */
export function designV(job: Job): number {
  const setsV = job.parts
    .filter((part) => part.kind === "regulator" && part.status !== "remove")
    .map((part) => (part.kind === "regulator" ? part.setV.value : 0));
  const usualV = figure("sizeRules", "charging-volts", "value").value * job.supply.nominalV;
  return setsV.length > 0 ? Math.max(...setsV) : usualV;
}

const LOSS_KINDS: ReadonlySet<string> = new Set(["contact", "fuse", "joint", "bond"]);

const lessLaw = (law: Law): Law =>
  law.kind === "ohm" ? { kind: "ohm", ohm: lessOhm(law.ohm) } : law;

const lessOhm = (ohm: number): number => Math.max(ohm * LOSSLESS_RATIO, Math.min(ohm, LEAST_OHM));

function placesOf(
  elements: readonly JobElement[],
  nameOf: (element: JobElement) => string | null,
): ReadonlyMap<number, string> {
  const places = new Map<number, string>();
  for (const [k, element] of elements.entries()) {
    const name = nameOf(element);
    if (name !== null) places.set(k, name);
  }
  return places;
}
