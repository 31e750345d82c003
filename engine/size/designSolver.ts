import { type Job, presentParts } from "../job/index.ts";
import {
  type CompiledNetwork,
  type Network,
  type RelayRule,
  settleInPlace,
} from "../network/index.ts";
import {
  carriedOver,
  type JobElement,
  restPositions,
  type stateTranslator,
} from "../operate/index.ts";
import type { DesignSolution, DesignsKept } from "./designNetwork.ts";
import type { DesignState } from "./designStates.ts";

export type Solver = (state: DesignState, was?: DesignSolution) => DesignSolution | null;

/**
 * Solves a state; from where it ended before, and then only if its relays rest there, where that is given.
 *
 * @param relaysOf  the relays as their contacts are in this network.
 */
export function solver(
  compiled: () => CompiledNetwork,
  networkState: ReturnType<typeof stateTranslator>,
  relaysOf: (rules: readonly RelayRule[]) => readonly RelayRule[],
  batteryAt: ReadonlyMap<number, string>,
): Solver {
  return (state, was) => {
    const made = compiled();
    const { network, work } = made;
    const { overrides, relays } = networkState(state);
    const start = was?.pulled ?? relays.map((relay) => relay.held);
    const mostA = new Float64Array(network.branches.length);
    const warm = was === undefined ? {} : { initialV: was.nodeV, isRefined: true };
    const settled = settleInPlace(made, relaysOf(relays), start, { overrides, mostA, ...warm });
    if (!settled.converged || !settled.settled) return null;
    if (was !== undefined && settled.roundCount > 1) return null;
    // Only volts and currents are wanted, so the slopes a whole solution holds are not made.
    const elementA = work.branchA.slice(0, network.branches.length);
    const nodeV = new Float64Array(network.nodeCount);
    const { nodeAtPosition, unknownCount } = made.pattern;
    for (let j = 0; j < unknownCount; j++) nodeV[nodeAtPosition[j]!] = work.positionV[j]!;
    let drawnA = 0;
    for (const k of batteryAt.keys()) drawnA = Math.max(drawnA, Math.abs(elementA[k]!));
    const { pulled, leastMarginV } = settled;
    const trail = was?.trail ?? { network, mostA, leastMarginV };
    return { elementA, nodeV, drawnA, pulled, network, trail };
  };
}

/** Takes states from an earlier network where they stand, and starts from them where their relays rest. */
export function carrying(
  lossless: Network,
  solve: Solver,
  before: DesignsKept | null,
): (state: DesignState, key: string) => DesignSolution | null {
  const carried = carriedOver(lossless);
  return (state, key) => {
    const was = before?.get(key) ?? null;
    const how = was === null ? "unknown" : carried(was);
    if (how === "stands") return was;
    return (how === "rests" ? solve(state, was!) : null) ?? solve(state);
  };
}

/** Whether the flash makes a difference: the flasher's contact carries something, A. */
export function flashing(elements: readonly JobElement[]): (solution: DesignSolution) => boolean {
  const contacts = elements.flatMap(({ role }, k) => (role.role === "flasher" ? [k] : []));
  return ({ elementA }) => contacts.some((k) => Math.abs(elementA[k]!) > LEAK_A);
}

/** More than any open contact lets through, A. */
const LEAK_A = 1e-6;

/** Keeps answers by what the network sees of a state: where every switch stands, and the flash. */
export function solvedOnce(
  job: Job,
  solve: (state: DesignState, key: string) => DesignSolution | null,
  flashes: (solution: DesignSolution) => boolean,
  known: Map<string, DesignSolution | null>,
): (state: DesignState) => DesignSolution | null {
  const switches = presentParts(job).flatMap(({ kind, id }) => (kind === "switch" ? [id] : []));
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  };
  return (state) => {
    const atRest = rest[state.engine.mode];
    const stands = switches.map((id) => state.positions[id] ?? atRest[id]);
    const key = `${state.flash} ${stands.join(" ")}`;
    const before = known.get(key);
    if (before !== undefined) return before;
    const lit = state.flash === "off" ? known.get(`on ${stands.join(" ")}`) : undefined;
    if (lit && !flashes(lit)) return lit;
    const solution = solve(state, key);
    known.set(key, solution);
    return solution;
  };
}
