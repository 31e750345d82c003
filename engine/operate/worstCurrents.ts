import type { Job } from "../job/index.ts";
import type { Conductors } from "../route/index.ts";
import { acReadings, elementReadings } from "./acReadings.ts";
import { type CompiledJob, compileJob } from "./compileJob.ts";
import type { BatteryRequest, OperateRequest } from "./operateResult.ts";
import { conditionsOf, readState } from "./readState.ts";
import { type FullState, neighbourStates, startingStates, stateKey } from "./startingStates.ts";
import { setVoltsV } from "./supplySources.ts";

/** A largest current and the state it was found in, as `operate` takes it. */
export interface WorstCurrent {
  /** A, ≥ 0. */
  readonly currentA: number;
  readonly state: FullState & { readonly battery?: BatteryRequest };
}

type Found = ReadonlyMap<string, WorstCurrent>;

/** Largest currents found over the states solved. A state in which a starter turns counts apart: it lasts seconds. */
export interface WorstCurrents {
  /** By conductor id (wire, or PART.PIN of a fly lead). */
  readonly conductors: Found;
  readonly crankingConductors: Found;
  /** By fuse id. */
  readonly fuses: Found;
  readonly crankingFuses: Found;
  /** By contact, PART:A-B. */
  readonly contacts: Found;
  readonly crankingContacts: Found;
  /** By connector cavity (CONNECTOR.CAVITY) and joint way (JOINT.WAY). */
  readonly joints: Found;
  readonly crankingJoints: Found;
  /** By load, PART:A-B. */
  readonly loads: Found;
  readonly stateCount: number;
  /** Of these, states that did not come to rest (a buzzing relay) and were left out. */
  readonly unsettledCount: number;
  /** True where the search stopped because it had solved all it may. */
  readonly endedEarly: boolean;
}

/** A starter that takes more than this share of nominal volts over its resistance is being used. */
const STARTING_RATIO = 0.1;
/** States one search may solve. */
const MOST_STATES = 20_000;
/** A state counts as better only by more than rounding: this share of the current. */
const LEAST_GAIN_RATIO = 1e-6;

/**
 * Searches the states of a job for the largest current of every conductor, contact, fuse, cavity and way: from the starting
 * states, then by single changes from every state that is the worst of something, until none makes anything worse. A state with
 * the engine running is solved twice, with the battery as it is asked for and with the battery full and standing at the
 * regulator's volts.
 */
export function worstCurrents(
  job: Job,
  conductors: Conductors,
  request: OperateRequest = {},
): WorstCurrents {
  const search = newSearch(job, conductors, request);
  const queue = [...startingStates(job)];
  for (const state of queue) solveInto(search, state);
  const expanded = new Set<string>();
  for (;;) {
    const next = bestStates(search).filter((state) => !expanded.has(stateKey(state)));
    if (next.length === 0 || search.solvedCount >= MOST_STATES) break;
    for (const state of next) {
      expanded.add(stateKey(state));
      for (const neighbour of neighbourStates(job, state)) solveInto(search, neighbour);
    }
  }
  const by = (starting: boolean, kind: Kind): Found => sorted(search.best[kind][starting ? 1 : 0]);
  return {
    conductors: by(false, "wire"),
    crankingConductors: by(true, "wire"),
    fuses: by(false, "fuse"),
    crankingFuses: by(true, "fuse"),
    contacts: by(false, "contact"),
    crankingContacts: by(true, "contact"),
    joints: by(false, "joint"),
    crankingJoints: by(true, "joint"),
    loads: by(false, "load"),
    stateCount: search.solvedCount,
    unsettledCount: search.unsettledCount,
    endedEarly: search.solvedCount >= MOST_STATES,
  };
}

type Kind = "wire" | "fuse" | "contact" | "joint" | "load";
type Best = Map<string, WorstCurrent>;

interface Search {
  readonly job: Job;
  readonly request: OperateRequest;
  /** One for each battery a running state is solved with; the first serves all states. */
  readonly batteries: readonly {
    readonly compiled: CompiledJob;
    readonly battery: BatteryRequest | null;
  }[];
  readonly kinds: readonly (Kind | null)[];
  readonly starters: readonly number[];
  readonly seen: Set<string>;
  /** Lasting, starting. */
  readonly best: Readonly<Record<Kind, readonly [Best, Best]>>;
  solvedCount: number;
  unsettledCount: number;
}

function newSearch(job: Job, conductors: Conductors, request: OperateRequest): Search {
  const conditions = conditionsOf(job, request);
  const compiled = compileJob(job, conductors, { conditions });
  const { elements, context } = compiled.jobNetwork;
  const setsV = context.parts.flatMap((part) =>
    part.kind === "regulator" && part.type !== "ac-shunt" ? [setVoltsV(context, part)] : [],
  );
  const charged = setsV.length === 0 ? [] : [{ emfV: Math.max(...setsV) }];
  const starters = new Set(
    context.parts.flatMap((part) =>
      part.kind === "motor" && part.use === "starter" ? [part.id] : [],
    ),
  );
  const both = (): readonly [Best, Best] => [new Map(), new Map()];
  return {
    job,
    request,
    batteries: [
      { compiled, battery: request.battery ?? null },
      ...charged.map((battery) => ({
        compiled: compileJob(job, conductors, { conditions: { ...conditions, battery } }),
        battery,
      })),
    ],
    kinds: elements.map(({ kind }) => kindOf(kind)),
    starters: elements.flatMap(({ of }, k) => (starters.has(of.split(":")[0]!) ? [k] : [])),
    seen: new Set(),
    best: { wire: both(), fuse: both(), contact: both(), joint: both(), load: both() },
    solvedCount: 0,
    unsettledCount: 0,
  };
}

function kindOf(kind: string): Kind | null {
  if (kind === "wire" || kind === "fuse" || kind === "contact" || kind === "joint") return kind;
  return kind === "filament" || kind === "resistor" || kind === "coil" ? "load" : null;
}

function solveInto(search: Search, state: FullState): void {
  const key = stateKey(state);
  if (search.seen.has(key) || search.solvedCount >= MOST_STATES) return;
  search.seen.add(key);
  const runs = state.engine.mode === "running";
  for (const { compiled, battery } of runs ? search.batteries : search.batteries.slice(0, 1)) {
    search.solvedCount++;
    const currentsA = currents(search, compiled, state);
    if (currentsA === null) search.unsettledCount++;
    else keepWorst(search, compiled, battery === null ? state : { ...state, battery }, currentsA);
  }
}

/** |current| of every element, A; null where the state does not come to rest. */
function currents(
  { job, request }: Search,
  compiled: CompiledJob,
  state: FullState,
): Float64Array | null {
  const hasAc = compiled.nets.nets.length > 0 && state.engine.mode === "running";
  if (!hasAc) {
    const solved = compiled.solve(state);
    return solved.converged ? solved.elementA.map(Math.abs) : null;
  }
  const both = compiled.solveBoth(state);
  if (!both.fromReleased.converged || !both.fromReleased.settled || !both.supplies.settled) {
    return null;
  }
  const read = readState(job, { ...request, ...state, set: state.positions });
  if (!read.ok) throw new Error(`state refused: ${read.refusals[0]?.message}`);
  const { currentA, sharedA } = elementReadings(
    compiled,
    both.fromReleased,
    acReadings(compiled, read.state, both),
  );
  return currentA.map((one, k) => Math.hypot(one, sharedA.get(k) ?? 0));
}

function keepWorst(
  search: Search,
  { jobNetwork: { elements }, job }: CompiledJob,
  state: WorstCurrent["state"],
  currentsA: Float64Array,
): void {
  const isStarting =
    state.engine.mode === "cranking" ||
    search.starters.some((k) => {
      const { law } = elements[k]!;
      const nominalA = law.kind === "ohm" ? job.supply.nominalV / law.ohm : 0;
      return currentsA[k]! > STARTING_RATIO * nominalA;
    });
  elements.forEach(({ of }, k) => {
    const kind = search.kinds[k];
    if (kind == null) return;
    const best = search.best[kind][isStarting ? 1 : 0];
    const currentA = currentsA[k]!;
    const before = best.get(of);
    if (before === undefined || currentA > before.currentA * (1 + LEAST_GAIN_RATIO)) {
      best.set(of, { currentA, state });
    }
  });
}

/** States that are the worst of something at the moment, each once. */
function bestStates(search: Search): readonly FullState[] {
  const states = new Map<string, FullState>();
  for (const kind of ["wire", "fuse", "contact", "joint"] as const) {
    for (const best of search.best[kind]) {
      for (const { state } of best.values()) states.set(stateKey(state), state);
    }
  }
  return [...states.values()];
}

const sorted = (best: Best): Found =>
  new Map([...best].sort(([one], [other]) => (one < other ? -1 : 1)));
