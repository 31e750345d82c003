import { type Job, presentParts } from "../job/index.ts";
import {
  type BothSettlements,
  type BranchOverride,
  type CompiledNetwork,
  compileNetwork,
  type Network,
  type NetworkOrder,
  type RelaySettlement,
  settleFrom,
  settleRelays,
} from "../network/index.ts";
import type { Conductors } from "../route/index.ts";
import { buildJobNetwork, type JobNetwork } from "./buildJobNetwork.ts";
import type { RelayTrail } from "./carriedOver.ts";
import { type CurrentNets, currentNets } from "./currentNets.ts";
import type { Conditions } from "./networkContext.ts";
import type { BatteryRequest } from "./operateResult.ts";
import { placedSources } from "./placedSources.ts";
import { type SuppliesSettled, settleSupplies, stillSupplies } from "./settleSupplies.ts";
import { type NetworkState, type QuickState, stateTranslator } from "./stateOverrides.ts";
import { batteryElements } from "./supplyElements.ts";
import { withCopper } from "./withCopper.ts";

/** Plain arrays of one solved state: volts by node, amperes by element (of `jobNetwork.elements`) and by short. */
export interface QuickSolution {
  /** Solved, relays at rest and sources settled. */
  readonly converged: boolean;
  readonly kclResidualA: number;
  readonly nodeV: Float64Array;
  readonly elementA: Float64Array;
  readonly shortA: Float64Array;
  /** In the order of `jobNetwork.relays`. */
  readonly pulled: readonly boolean[];
  readonly buzzing: readonly string[];
  readonly supplies: SuppliesSettled;
  /** What the last network was solved under. */
  readonly networkState: NetworkState;
  /** What it solves. */
  readonly network: Network;
  /** How the relays came to rest, from all released. */
  readonly trail: RelayTrail;
}

/** A state settled from released and from pulled relays, with the overrides both were solved under. */
export interface BothSolutions extends BothSettlements {
  readonly supplies: SuppliesSettled;
  readonly networkState: NetworkState;
}

/** A job ready for many states. One caller at a time: each solve overwrites the workspace of the one before. */
export interface CompiledJob {
  readonly job: Job;
  readonly conductors: Conductors;
  readonly conditions: Conditions;
  readonly jobNetwork: JobNetwork;
  readonly compiledNetwork: CompiledNetwork;
  /** Index of the element of each wire and fly lead, by conductor id. */
  readonly elementOfConductor: ReadonlyMap<string, number>;
  /** Alternating nets of the intact machine. */
  readonly nets: CurrentNets;
  readonly networkState: (state: QuickState) => NetworkState;
  /** Settled from released (and held) relays. */
  readonly solve: (state: QuickState) => QuickSolution;
  /** The same, good until the next glance: for callers that read it at once. Large solutions cost more to keep than to find. */
  readonly glance: (state: QuickState) => QuickSolution;
  /**
   * A state known to end like one solved before, from where that ended; null where it does not rest there. Its trail is the
   * caller's to tell.
   */
  readonly solveFrom: (state: QuickState, was: QuickSolution) => QuickSolution | null;
  readonly solveBoth: (state: QuickState) => BothSolutions;
  /** Solutions kept, by what the network sees of their states; only of a job that remembers. */
  readonly kept?: ReadonlyMap<string, QuickSolution>;
}

/**
 * Lays a job out for many solves.
 *
 * @param takenApart  pins of parts that some state will open or make worse (see pinsToTakeApart). A pin where a single element
 *                    of its part ends can be opened without.
 * @param like        see compileNetwork.
 * @param isTrailed   whether solutions carry the trail of their relays; without, none is ever taken over (see `remembering`). Default true.
 * @param base        a network of the same joins and parts: see withCopper.
 */
export function compileJob(
  job: Job,
  conductors: Conductors,
  options: {
    readonly conditions: Conditions;
    readonly takenApart?: readonly string[];
    readonly like?: NetworkOrder | null;
    readonly isTrailed?: boolean;
    readonly base?: JobNetwork | null;
  },
): CompiledJob {
  const { base } = options;
  const jobNetwork = base
    ? withCopper(base, job, conductors, options.conditions)
    : buildJobNetwork(job, conductors, options);
  const compiledNetwork = compileNetwork(jobNetwork.network, options.like);
  const networkState = stateTranslator(job, jobNetwork);
  const { conditions, isTrailed = true } = options;
  const made = { job, conductors, conditions, jobNetwork, compiledNetwork, networkState };
  return compiledJob(made, isTrailed);
}

/** The same job with its batteries in another state, solved in the workspace of the first. */
export function withBattery(compiled: CompiledJob, battery: BatteryRequest): CompiledJob {
  const { job, conductors, jobNetwork, compiledNetwork } = compiled;
  const conditions = { ...compiled.conditions, battery };
  const laws = presentParts(job).flatMap((part) =>
    part.kind === "battery" ? batteryElements({ ...jobNetwork.context, conditions }, part) : [],
  );
  const held = jobNetwork.elements.flatMap(({ kind, of }, branchIndex): BranchOverride[] => {
    if (kind !== "emf") return [];
    return [{ branchIndex, law: laws.find((one) => one.of === of)!.law }];
  });
  const networkState = (state: QuickState): NetworkState => {
    const set = compiled.networkState(state);
    return { ...set, overrides: [...set.overrides, ...held] };
  };
  return compiledJob({ job, conductors, conditions, jobNetwork, compiledNetwork, networkState });
}

function compiledJob(
  from: Pick<
    CompiledJob,
    "job" | "conductors" | "conditions" | "jobNetwork" | "compiledNetwork" | "networkState"
  >,
  isTrailed = true,
): CompiledJob {
  const { jobNetwork, compiledNetwork, networkState } = from;
  const sources = placedSources(jobNetwork);
  const still = stillSupplies(sources);
  const room = new Float64Array(
    jobNetwork.nodes.names.length + jobNetwork.elements.length + MOST_GLANCED_SHORTS,
  );
  const settle = (state: QuickState, { from = null, into, slopes = false }: Way) => {
    const set = networkState(state);
    const start = from === null ? set.relays.map((relay) => relay.held) : from.pulled;
    const mostA = isTrailed ? new Float64Array(jobNetwork.elements.length) : null;
    const once = (
      overrides: readonly BranchOverride[],
      lastV: Float64Array | null,
    ): RelaySettlement => {
      const initialV = lastV ?? from?.nodeV ?? null;
      return settleFrom(compiledNetwork, set.relays, start, {
        overrides,
        shorts: set.shorts,
        slopes,
        ...(into && { into }),
        ...(mostA !== null && { mostA }),
        isRefined: from !== null,
        ...(initialV !== null && { initialV }),
      });
    };
    return { set, mostA, ...settleSupplies({ sources, still, state, set, once }) };
  };
  const solved = (state: QuickState, way: Way = {}): QuickSolution => {
    const { settlement, supplies, mostA, set, overrides } = settle(state, way);
    const { network } = jobNetwork;
    const trail = trailOf(network, mostA, settlement);
    return quickSolution(settlement, supplies, { ...set, overrides }, network, trail);
  };
  return {
    ...from,
    elementOfConductor: new Map(
      jobNetwork.elements.flatMap(({ kind, of }, k) => (kind === "wire" ? [[of, k] as const] : [])),
    ),
    nets: currentNets(jobNetwork),
    solve: (state) => solved(state),
    glance: (state) => solved(state, { into: room }),
    solveFrom: (state, was) => {
      const { settlement, supplies, set, overrides } = settle(state, { from: was });
      const isAtRest = settlement.roundCount === 1 && supplies.roundCount === 1;
      const under = { ...set, overrides };
      const { network } = jobNetwork;
      const solution = quickSolution(settlement, supplies, under, network, was.trail);
      return isAtRest && solution.converged ? solution : null;
    },
    solveBoth: (state) => {
      const { set, overrides, supplies, settlement } = settle(state, { slopes: true });
      const options = { overrides, shorts: set.shorts };
      // After one round, from nothing, it was the very solve the first of both asks for.
      const known = supplies.roundCount === 1 ? settlement : null;
      const both = settleRelays(compiledNetwork, set.relays, options, known);
      return { ...both, supplies, networkState: { ...set, overrides } };
    },
  };
}

/** How a state is settled: from where another ended, and into which room. */
interface Way {
  readonly from?: QuickSolution | null;
  readonly into?: Float64Array;
  readonly slopes?: boolean;
}

/** Shorts of a state that fit into the room of glances beside volts and currents; of more the solution is laid out afresh. */
const MOST_GLANCED_SHORTS = 8;
function trailOf(
  network: Network,
  mostA: Float64Array | null,
  { leastMarginV }: RelaySettlement,
): RelayTrail {
  return mostA === null
    ? { network, mostA: NO_CURRENTS, leastMarginV: Number.NEGATIVE_INFINITY }
    : { network, mostA, leastMarginV };
}

const NO_CURRENTS = new Float64Array(0);

function quickSolution(
  settled: RelaySettlement,
  supplies: SuppliesSettled,
  networkState: NetworkState,
  network: Network,
  trail: RelayTrail,
): QuickSolution {
  const { solution } = settled;
  return {
    converged: settled.converged && settled.settled && supplies.settled,
    kclResidualA: settled.kclResidualA,
    nodeV: solution.nodeV,
    elementA: solution.branchA,
    shortA: solution.shortA,
    pulled: settled.pulled,
    buzzing: settled.buzzing,
    supplies,
    networkState,
    network,
    trail,
  };
}
