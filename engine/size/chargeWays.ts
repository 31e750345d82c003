import { batteryOf, type Job, type PartOf, pinRef, presentParts } from "../job/index.ts";
import type { JobElement } from "../operate/index.ts";
import type { DesignWay } from "./designCurrents.ts";
import { type DesignNetwork, designV } from "./designNetwork.ts";

export interface ChargeWays {
  /** What a generator sends through each set of wires, A. */
  readonly currents: readonly { readonly currentA: number; readonly wires: readonly string[] }[];
  /** From where it is regulated to the battery and back. */
  readonly ways: readonly DesignWay[];
}

type Regulator = PartOf<"regulator">;
type Generator = PartOf<"generator">;

/**
 * The wires that carry what a generator sends: from its output to its regulator, and from there to the battery and back.
 * Each is taken along the way of least resistance with every contact closed. The current is the largest output point,
 * else rated watts at the charging volts; on the alternating side the same, which is above the rms of each phase.
 */
export function chargeWays(job: Job, network: DesignNetwork): ChargeWays {
  const battery = batteryOf(job);
  const parts = presentParts(job);
  const generators = parts.filter((part) => part.kind === "generator");
  const regulators = parts.filter((part) => part.kind === "regulator");
  const graph = waysBetweenPins(network);
  const currents: { currentA: number; wires: readonly string[] }[] = [];
  const ways: DesignWay[] = [];
  for (const generator of generators) {
    const regulator = regulators.find((one) => serves(one, generator, generators.length));
    const currentA = outputA(job, generator);
    if (currentA === null || regulator === undefined) continue;
    const inputs = regulator.inputPins.map((pin) => pinRef(regulator.id, pin));
    for (const pin of outputPins(generator)) {
      const wires = graph([pinRef(generator.id, pin)], inputs);
      if (wires !== null) currents.push({ currentA, wires });
    }
    if (battery === null) continue;
    const posts = {
      positive: pinRef(battery.battery.id, battery.battery.positivePin),
      negative: pinRef(battery.battery.id, battery.battery.negativePin),
    };
    const feed = wayFrom(regulator, regulator.positivePin, posts.positive, graph);
    const back = wayFrom(regulator, regulator.negativePin, posts.negative, graph);
    currents.push({ currentA, wires: [...feed, ...back] });
    if (feed.length + back.length === 0) continue;
    ways.push({
      load: generator.id,
      duty: "charging",
      feed,
      back,
      contactV: 0,
      state: null,
    });
  }
  return { currents, ways };
}

type Graph = (from: readonly string[], to: readonly string[]) => readonly string[] | null;

function wayFrom(
  regulator: Regulator,
  pin: string | undefined,
  post: string,
  graph: Graph,
): readonly string[] {
  return pin === undefined ? [] : (graph([pinRef(regulator.id, pin)], [post]) ?? []);
}

const serves = (regulator: Regulator, generator: Generator, generatorCount: number): boolean =>
  regulator.generator === undefined ? generatorCount === 1 : regulator.generator === generator.id;

const outputPins = ({ windings }: Generator): readonly string[] =>
  windings
    .filter(({ use }) => ["armature", "phase", "output", "charge", "lighting"].includes(use))
    .flatMap(({ pins }) => pins);

function outputA(job: Job, { windings, ratedW }: Generator): number | null {
  const statedA = windings.flatMap(({ points }) => (points ?? []).map(({ currentA }) => currentA));
  if (statedA.length > 0) return Math.max(...statedA);
  const sumW = windings.reduce((sum, one) => sum + (one.ratedW ?? 0), 0);
  const watts = ratedW ?? sumW;
  return watts > 0 ? watts / designV(job) : null;
}

/** Dijkstra over everything a direct current passes without work: wires, joins, fuses, contacts as if closed, ammeters. */
function waysBetweenPins({ elements, conductorAt, loadAt, batteryAt }: DesignNetwork): Graph {
  const passes = (element: JobElement, k: number): boolean =>
    element.law.kind === "ohm" &&
    element.kind !== "coil" &&
    !loadAt.has(k) &&
    !batteryAt.has(k) &&
    element.law.ohm < MOST_OHM;
  const touching = new Map<string, number[]>();
  for (const [k, element] of elements.entries()) {
    if (!passes(element, k)) continue;
    for (const pin of [element.from, element.to]) {
      touching.set(pin, [...(touching.get(pin) ?? []), k]);
    }
  }
  const costOf = (k: number): number => {
    const { law } = elements[k]!;
    return law.kind === "ohm" ? law.ohm : Number.POSITIVE_INFINITY;
  };
  return (from, to) => {
    const costs = new Map<string, number>(from.map((pin) => [pin, 0]));
    const last = new Map<string, { k: number; from: string }>();
    // Reached and not yet gone on from, in the order they were reached in.
    const open = new Set<string>(from);
    for (;;) {
      let pin: string | null = null;
      for (const one of open) {
        if (pin === null || costs.get(one)! < costs.get(pin)!) pin = one;
      }
      if (pin === null) return null;
      if (to.includes(pin)) return wiresBack(pin, last, conductorAt);
      open.delete(pin);
      for (const k of touching.get(pin) ?? []) {
        const next = elements[k]!.from === pin ? elements[k]!.to : elements[k]!.from;
        const cost = costs.get(pin)! + costOf(k);
        if (cost >= (costs.get(next) ?? Number.POSITIVE_INFINITY)) continue;
        costs.set(next, cost);
        open.add(next);
        last.set(next, { k, from: pin });
      }
    }
  };
}

/** A voltmeter, a bleed or an open bond is no way for a charging current, Ω. */
const MOST_OHM = 1;

function wiresBack(
  to: string,
  last: ReadonlyMap<string, { readonly k: number; readonly from: string }>,
  conductorAt: ReadonlyMap<number, string>,
): readonly string[] {
  const wires: string[] = [];
  for (let step = last.get(to); step !== undefined; step = last.get(step.from)) {
    const wire = conductorAt.get(step.k);
    if (wire !== undefined) wires.push(wire);
  }
  return wires.reverse();
}
