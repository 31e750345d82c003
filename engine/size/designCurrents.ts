import { type Job, presentParts } from "../job/index.ts";
import type { Network, NetworkOrder } from "../network/index.ts";
import { type JobNetwork, resistedAnew } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { lossV, type SolvedWay, waysOf } from "./calmWays.ts";
import { chargeWays } from "./chargeWays.ts";
import {
  type DesignNetwork,
  type DesignSolution,
  type DesignsKept,
  designNetwork,
} from "./designNetwork.ts";
import { type DesignState, designStates } from "./designStates.ts";

/** The largest current of a wire and a state it flows in; null for what a generator sends. */
export interface DesignCurrent {
  readonly currentA: number;
  readonly state: DesignState | null;
}

/**
 * One way a load is fed, in its calmest state: the load with only what must be on with it, as a mechanic measures its
 * volt drop.
 */
export interface DesignWay {
  /** Load PART:A-B, or generator part. */
  readonly load: string;
  readonly duty: "continuous" | "cranking" | "charging";
  readonly feed: readonly string[];
  readonly back: readonly string[];
  /** Volts in contacts, fuses, joints, bonds and diodes at the design currents. */
  readonly contactV: number;
  readonly state: DesignState | null;
}

export interface DesignCurrents {
  /** What flows for long, by wire or fly lead. */
  readonly continuous: ReadonlyMap<string, DesignCurrent>;
  /** The largest over the states of `ways`: what volt drop is reckoned with. */
  readonly calm: ReadonlyMap<string, DesignCurrent>;
  /** What flows while a starter turns, by wire or fly lead on its way. */
  readonly cranking: ReadonlyMap<string, DesignCurrent>;
  readonly ways: readonly DesignWay[];
  /** What the above was put together from, group by group: of no interest to a reader, all the dearer to find again. */
  readonly drawn: readonly DrawnByGroup[];
}

/** What was found with one supply: it stands as long as the network it was found in. */
export interface Drawn {
  readonly lossless: Network;
  /** Another network of the same joins can be laid out like it. */
  readonly order: NetworkOrder;
  readonly kept: DesignsKept;
  readonly currents: ReadonlyMap<string, DesignCurrent>;
  /** The largest over the states of `ways`. */
  readonly calm: ReadonlyMap<string, DesignCurrent>;
  readonly ways: readonly SolvedWay[];
}

export interface DrawnByGroup {
  readonly charging: Drawn;
  readonly cranking: Drawn;
}

/**
 * Design currents, fixed before any size is chosen and above what any size can let flow, so that sizing needs no repeat:
 * every load at the highest volts of the supply with nothing lost on the way, every wire at the largest sum over states.
 *
 * @param before  what was found of the same switches, states and joins; taken where the network has not changed either.
 * @param base    see withCopper.
 */
export function designCurrents(
  job: Job,
  conductors: Conductors,
  before: DrawnByGroup | null = null,
  base: JobNetwork | null = null,
): DesignCurrents {
  const starters = starterLoads(job);
  const isRunning = (load: string): boolean => !starters.has(load);
  const network = designNetwork(job, conductors, "charging", { base, ...before?.charging });
  const charging = drawn(network, before?.charging ?? null, () => {
    const survey = surveyed(job, network, "charging", starters);
    return { survey, ways: waysOf(survey, "continuous", isRunning) };
  });
  const crankNetwork = designNetwork(job, conductors, "cranking", {
    base,
    order: charging.order,
    kept: before?.cranking.kept ?? null,
  });
  const cranking = drawn(crankNetwork, before?.cranking ?? null, () => {
    const survey = surveyed(job, crankNetwork, "cranking", starters);
    return { survey, ways: waysOf(survey, "cranking", (load) => starters.has(load)) };
  });
  const chargeWay = chargeWays(job, network);
  return {
    continuous: withCharge(charging.currents, chargeWay.currents),
    calm: withCharge(charging.calm, chargeWay.currents),
    cranking: cranking.currents,
    ways: [
      ...[...charging.ways, ...cranking.ways].map(
        ({ solution: _, passed: __, ...way }): DesignWay => way,
      ),
      ...chargeWay.ways,
    ],
    drawn: [{ charging, cranking }],
  };
}

/** Taken from before where the network is the one before; only what contacts and fuses lose is reckoned again. */
function drawn(
  network: DesignNetwork,
  before: Drawn | null,
  find: () => { readonly survey: Survey; readonly ways: readonly SolvedWay[] },
): Drawn {
  const { lossless } = network;
  if (before !== null && resistedAnew(before.lossless, lossless)?.length === 0) {
    const ways = before.ways.map((way) => ({
      ...way,
      contactV: lossV(network, way.solution, way.passed),
    }));
    return { ...before, ways };
  }
  const { survey, ways } = find();
  const { pattern } = network.compiled();
  const order = { network: lossless, pattern };
  const { kept } = network;
  const calm = largestOver(network, ways);
  return { lossless, order, kept, currents: largest(survey), calm, ways };
}

function withCharge(
  currents: ReadonlyMap<string, DesignCurrent>,
  charge: readonly { readonly currentA: number; readonly wires: readonly string[] }[],
): ReadonlyMap<string, DesignCurrent> {
  const all = new Map(currents);
  for (const { currentA, wires } of charge) {
    for (const wire of wires) {
      if ((all.get(wire)?.currentA ?? 0) < currentA) all.set(wire, { currentA, state: null });
    }
  }
  return all;
}

function starterLoads(job: Job): ReadonlySet<string> {
  const motors = presentParts(job).filter(
    (part) => part.kind === "motor" && part.use === "starter",
  );
  return new Set(
    motors.map((part) =>
      part.kind === "motor" ? `${part.id}:${part.between[0]}-${part.between[1]}` : "",
    ),
  );
}

interface Solved {
  readonly state: DesignState;
  readonly solution: DesignSolution;
}

export interface Survey {
  readonly job: Job;
  readonly network: DesignNetwork;
  readonly solved: readonly Solved[];
}

/** Solves the design states: those in which no starter turns for "charging", only those for "cranking". */
function surveyed(
  job: Job,
  network: DesignNetwork,
  supply: "charging" | "cranking",
  starters: ReadonlySet<string>,
): Survey {
  const isCranking = supply === "cranking";
  if (isCranking && starters.size === 0) return { job, network, solved: [] };
  const starterAt = [...network.loadAt].filter(([, load]) => starters.has(load)).map(([k]) => k);
  // States that differ only in what no contact follows share one answer: the first of them stands for all.
  const solved = new Map<DesignSolution, DesignState>();
  designStates(job, (state) => {
    const solution = network.solve(state);
    if (solution === null) return null;
    const starterA = Math.max(0, ...starterAt.map((k) => Math.abs(solution.elementA[k]!)));
    const turns = starterA > TURNING_A;
    if (turns && !isCranking) return null;
    if (turns === isCranking && !solved.has(solution)) solved.set(solution, state);
    return solution.drawnA;
  });
  const all = [...solved].map(([solution, state]) => ({ state, solution }));
  return { job, network, solved: all };
}

/** A starter that draws less is only leaking through a relay coil or a lamp, A. */
const TURNING_A = 5;

function largest({ network, solved }: Survey): ReadonlyMap<string, DesignCurrent> {
  return largestOver(network, solved);
}

/** Of states alike the first stands, whatever a solve left in the last digits. */
const MORE_RATIO = 1e-7;
const MORE_A = 1e-7;

function largestOver(
  network: DesignNetwork,
  solved: readonly { readonly state: DesignState | null; readonly solution: DesignSolution }[],
): ReadonlyMap<string, DesignCurrent> {
  const places = Int32Array.from(network.conductorAt.keys());
  const mostA = new Float64Array(places.length);
  const at = new Int32Array(places.length).fill(-1);
  for (const [index, { solution }] of solved.entries()) {
    for (let i = 0; i < places.length; i++) {
      const currentA = Math.abs(solution.elementA[places[i]!]!);
      if (currentA > mostA[i]! * (1 + MORE_RATIO) + MORE_A) at[i] = index;
      mostA[i] = Math.max(mostA[i]!, currentA);
    }
  }
  const found = new Map<string, DesignCurrent>();
  for (const [i, conductor] of [...network.conductorAt.values()].entries()) {
    if (at[i]! < 0) continue;
    found.set(conductor, { currentA: mostA[i]!, state: solved[at[i]!]!.state });
  }
  return found;
}
