import type { Branch, DiodeLaw, Law, Network, RelayRule } from "./network.ts";

/**
 * A made-up network for tests and measurements, with the shape the solver is meant for: two sources behind resistance, a main
 * link, feeders with splices, long chains to filaments, returns gathered at a few points joined by a mesh, two ring links,
 * contacts everywhere, relays. All values are invented.
 */
export interface FeederNetwork {
  readonly network: Network;
  /** Branches that are contacts, each closed as compiled. */
  readonly contacts: readonly number[];
  readonly filaments: readonly number[];
  readonly relays: readonly RelayRule[];
}

export interface FeederShape {
  readonly seed: number;
  readonly feederCount: number;
  readonly filamentCount: number;
  readonly relayCount: number;
  readonly diodeCount: number;
  /** Volts of the main source; negative turns every source round. */
  readonly emfV: number;
}

/** 20 filaments, 4 relays, 5 feeders, about 160 nodes. */
export const MEASURED_SHAPE: FeederShape = {
  seed: 1,
  feederCount: 5,
  filamentCount: 20,
  relayCount: 4,
  diodeCount: 0,
  emfV: 12.6,
};

export const CLOSED_OHM = 0.004;
export const OPEN_OHM = 1e9;
const RETURN_POINT_COUNT = 4;

/** Same numbers for the same seed, 0 ≤ x < 1 (mulberry32, a public-domain 32-bit generator, *memory*). */
export function seeded(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

interface Draft {
  readonly shape: FeederShape;
  readonly random: () => number;
  readonly branches: Branch[];
  readonly contacts: number[];
  readonly filaments: number[];
  readonly relays: RelayRule[];
  nodeCount: number;
}

export function feederNetwork(shape: FeederShape): FeederNetwork {
  const draft: Draft = {
    shape,
    random: seeded(shape.seed),
    branches: [],
    contacts: [],
    filaments: [],
    relays: [],
    nodeCount: 1,
  };
  const returns = addReturns(draft);
  const splices = addFeeders(draft, addSources(draft, returns[0]!));
  const kinds = Math.max(1, shape.filamentCount);
  for (let k = 0; k < shape.filamentCount; k++) {
    const relay = k % Math.ceil(kinds / Math.max(1, shape.relayCount)) === 0;
    addFilament(draft, pick(draft, splices[k % splices.length]!), pick(draft, returns), relay);
  }
  for (let k = 0; k < shape.diodeCount; k++) {
    const from = pick(draft, splices[k % splices.length]!);
    addDiode(draft, from, pick(draft, splices[(k + 1) % splices.length]!), pick(draft, returns));
  }
  for (let k = 0; k < 2 && splices.length > k + 1; k++) {
    wire(draft, splices[k]![1]!, splices[k + 1]![1]!);
  }
  const { branches, contacts, filaments, relays, nodeCount } = draft;
  return { network: { nodeCount, branches, leakOhm: 1e9 }, contacts, filaments, relays };
}

function addSources(draft: Draft, returnPoint: number): number {
  const { emfV } = draft.shape;
  const post = node(draft);
  add(draft, post, 0, { kind: "emf", emfV, internalOhm: 0.012 });
  const generator = node(draft);
  const generatorReturn = node(draft);
  add(draft, generator, generatorReturn, { kind: "emf", emfV: 1.14 * emfV, internalOhm: 0.35 });
  wire(draft, generatorReturn, returnPoint);
  const main = chain(draft, post, 1);
  wire(draft, generator, main);
  const contactIn = chain(draft, main, 1);
  const contactOut = node(draft);
  contact(draft, contactIn, contactOut);
  return contactOut;
}

function addReturns(draft: Draft): number[] {
  const points = Array.from({ length: RETURN_POINT_COUNT }, () => node(draft));
  for (let k = 0; k < points.length; k++) {
    for (let l = k + 1; l < points.length; l++) wire(draft, points[k]!, points[l]!);
  }
  wire(draft, points[0]!, 0);
  return points;
}

function addFeeders(draft: Draft, from: number): number[][] {
  return Array.from({ length: draft.shape.feederCount }, () => {
    const link = chain(draft, from, 1);
    const first = chain(draft, link, 1);
    return [first, chain(draft, first, 1)];
  });
}

function addFilament(draft: Draft, from: number, returnPoint: number, relay: boolean): void {
  const contactIn = chain(draft, from, 1);
  const contactOut = node(draft);
  if (relay && draft.relays.length < draft.shape.relayCount) {
    addRelay(draft, from, returnPoint, contactIn, contactOut);
  } else contact(draft, contactIn, contactOut);
  const feed = chain(draft, contactOut, 3);
  const back = node(draft);
  const ratedV = Math.abs(draft.shape.emfV) > 9 ? 12 : 6;
  const watts = 1.2 * (55 / 1.2) ** draft.random();
  draft.filaments.push(draft.branches.length);
  add(draft, feed, back, {
    kind: "filament",
    ratedV,
    ratedA: watts / ratedV,
    exponent: 0.55,
    eps: 0.004,
  });
  wire(draft, back, returnPoint);
}

function addRelay(draft: Draft, from: number, back: number, inNode: number, outNode: number): void {
  const contactIn = chain(draft, from, 1);
  const coilA = node(draft);
  const coilB = node(draft);
  contact(draft, contactIn, coilA);
  const sizeV = Math.abs(draft.shape.emfV);
  add(draft, coilA, coilB, { kind: "ohm", ohm: 90 });
  wire(draft, coilB, back);
  draft.relays.push({
    id: `relay ${draft.relays.length}`,
    coilA,
    coilB,
    pullInV: 0.57 * sizeV,
    dropOutV: 0.19 * sizeV,
    closedWhenPulled: [draft.branches.length],
    closedWhenReleased: [],
    closedOhm: 0.006,
    openOhm: OPEN_OHM,
    held: false,
  });
  add(draft, inNode, outNode, { kind: "ohm", ohm: OPEN_OHM });
}

function addDiode(draft: Draft, from: number, to: number, returnPoint: number): void {
  const law: DiodeLaw = { kind: "diode", isA: 1e-9, n: 1.8, seriesOhm: 0.02, thermalV: 0.026 };
  const middle = node(draft);
  const [anode, cathode] = draft.shape.emfV > 0 ? [from, middle] : [middle, from];
  add(draft, anode, cathode, law);
  add(draft, middle, returnPoint, { kind: "ohm", ohm: 5 + 50 * draft.random() });
  contact(draft, middle, to);
}

function node(draft: Draft): number {
  return draft.nodeCount++;
}

function add(draft: Draft, a: number, b: number, law: Law): void {
  draft.branches.push({ id: `B${draft.branches.length}`, a, b, law });
}

function wire(draft: Draft, a: number, b: number): void {
  add(draft, a, b, { kind: "ohm", ohm: 0.002 + 0.06 * draft.random() });
}

function contact(draft: Draft, a: number, b: number): void {
  draft.contacts.push(draft.branches.length);
  add(draft, a, b, { kind: "ohm", ohm: CLOSED_OHM });
}

/** `count` wires in series; returns the far end. */
function chain(draft: Draft, from: number, count: number): number {
  let last = from;
  for (let k = 0; k < count; k++) {
    const next = node(draft);
    wire(draft, last, next);
    last = next;
  }
  return last;
}

function pick<T>(draft: Draft, list: readonly T[]): T {
  return list[Math.floor(draft.random() * list.length)]!;
}
