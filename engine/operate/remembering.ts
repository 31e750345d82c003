import { type Job, presentParts } from "../job/index.ts";
import type { Network } from "../network/index.ts";
import type { CompiledJob, QuickSolution } from "./compileJob.ts";
import type { EngineMode } from "./operateResult.ts";
import { RUNNING_RPM, restPositions } from "./readState.ts";
import { type Resisted, resistedAnew } from "./resistedAnew.ts";
import type { QuickState } from "./stateOverrides.ts";

/** Where no volts move by more than this a solution stands as it is, V. */
const STANDS_V = 1e-9;

/**
 * A compiled job that solves a state once: its numbers are shared, not copied, and the workspace does not hold it when it is asked for
 * again.
 *
 * Where resistances changed since `before` and nothing else, no volts of a state move by more than
 *
 *   Σ |R' − R| · |i|   over the elements changed, i the current before
 *
 * (a change of resistance is a source of (R' − R) · i in series with it, and in a network of laws that rise no volts exceed those of
 * its sources: Duffin 1947 and the no-gain property after it, *memory*). So a state in which nothing flows through what changed
 * stands as it was; and where no coil could come to another answer on the way, the relays rest where they rested, and the state is
 * solved from there.
 *
 * @param before  of the same switches, states and joins.
 */
export function remembering(compiled: CompiledJob, before: CompiledJob | null = null): CompiledJob {
  const { network } = compiled.jobNetwork;
  const keyOf = keyed(compiled.job);
  const kept = new Map<string, QuickSolution>();
  const changes = new Map<Network, readonly Resisted[] | null>();
  const changedSince = (was: Network): readonly Resisted[] | null => {
    const known = changes.get(was);
    if (known !== undefined) return known;
    const found = resistedAnew(was, network);
    changes.set(was, found);
    return found;
  };
  const movedV = (was: Network, currentA: Float64Array): number => {
    const changed = changedSince(was);
    if (changed === null) return Number.POSITIVE_INFINITY;
    return changed.reduce((sum, { k, byOhm }) => sum + byOhm * Math.abs(currentA[k]!), 0);
  };
  const again = (state: QuickState, was: QuickSolution): QuickSolution | null => {
    const { trail, network: solvedIn, elementA } = was;
    const isRunning = state.engine?.mode === "running";
    if (isRunning || !was.converged || was.supplies.roundCount !== 1) return null;
    const isOneWay = movedV(trail.network, trail.mostA) < trail.leastMarginV;
    if (!isOneWay) return null;
    return movedV(solvedIn, elementA) <= STANDS_V ? was : compiled.solveFrom(state, was);
  };
  const solve = (state: QuickState): QuickSolution => {
    const key = keyOf(state);
    if (key === null) return compiled.solve(state);
    const known = kept.get(key);
    if (known !== undefined) return known;
    const was = before?.kept?.get(key);
    const solution = (was === undefined ? null : again(state, was)) ?? compiled.solve(state);
    kept.set(key, solution);
    return solution;
  };
  return { ...compiled, solve, kept };
}

/**
 * What the network sees of a state: where every switch stands, the flash, how fast the engine runs, what is open. Modes other than
 * running are one to it but for the switches that follow them. Null for states nobody asks for twice.
 */
function keyed(job: Job): (state: QuickState) => string | null {
  const switches = presentParts(job).flatMap(({ kind, id }) => (kind === "switch" ? [id] : []));
  const rest = {
    stopped: restPositions(job, "stopped"),
    cranking: restPositions(job, "cranking"),
    running: restPositions(job, "running"),
  } satisfies Record<EngineMode, unknown>;
  return (state) => {
    if (isOdd(state)) return null;
    const { positions, flash = "off", engine, open = [] } = state;
    const atRest = rest[engine?.mode ?? "stopped"];
    const speedRpm = engine?.mode === "running" ? (engine.speedRpm ?? RUNNING_RPM) : 0;
    let key = `${flash} ${speedRpm}`;
    for (const id of switches) key += ` ${positions?.[id] ?? atRest[id]!}`;
    for (const id of open) key += ` /${id}`;
    return key;
  };
}

/** Shorted, worse by a resistance, held, or brought about by what was before. */
const isOdd = ({ short, extraOhm, held, excited }: QuickState): boolean =>
  (short !== undefined && short.length > 0) ||
  (held !== undefined && held.length > 0) ||
  extraOhm !== undefined ||
  excited === true;
