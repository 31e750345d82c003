import { presentParts } from "../job/index.ts";
import { type CompiledJob, type QuickState, withBattery } from "../operate/index.ts";
import { type CurrentTally, newTally, tallyUp, worstStates } from "./currentTally.ts";
import { stageOf } from "./fuseLoads.ts";
import { loadTally } from "./loadTally.ts";
import { runningCurrents } from "./runningCurrents.ts";
import { type FullState, searchStates } from "./searchStates.ts";
import { shortGauge } from "./shortGauge.ts";
import type { LoadSeen, ShortedState } from "./worstCase.ts";

/** Bounds the search for worst states of one group, in solves. */
const SOLVE_COUNT_MAX = 350;
/** A starter that draws more than this is cranking, A. */
const CRANKING_A = 5;
/** Elements whose largest current steers the search. */
const STEERING: ReadonlySet<string> = new Set(["wire", "contact", "fuse"]);

/** A state that was solved, and what the battery was held at where it was not the full battery at rest. */
export interface Met {
  readonly state: QuickState;
  readonly batteryV: number | null;
}

/** Largest currents of every element of one network; a tally holds places in `met`. */
export interface GroupSearch {
  readonly lasting: CurrentTally;
  readonly cranking: CurrentTally;
  readonly met: Met[];
  /** Of `lasting`, on the full battery alone, and with the charged battery too, A by element. */
  readonly fullA: Float64Array;
  readonly chargedA: Float64Array;
  readonly loads: ReadonlyMap<string, LoadSeen>;
  readonly shorted: readonly ShortedState[];
  readonly complete: boolean;
}

/**
 * The largest currents and drops of a group: a search on the full battery finds the worst states (and every drop), those are
 * solved again with the battery held at the regulator's volts, then some with the engine running.
 *
 * @param chargedV  what the regulator is set to, V; null where nothing charges the battery.
 */
export function groupSearch(compiled: CompiledJob, chargedV: number | null): GroupSearch {
  const { elements } = compiled.jobNetwork;
  const tallies = {
    lasting: newTally(elements.length),
    cranking: newTally(elements.length),
    met: [] as Met[],
  };
  const starters = startersOf(compiled);
  const turns = (elementA: Float64Array): boolean =>
    starters.some((k) => Math.abs(elementA[k]!) > CRANKING_A);
  const loads = loadTally(compiled);
  const shortOf = shortGauge(compiled);
  const shorted: ShortedState[] = [];
  const search = searchStates(compiled, {
    watch: (state, solution, index) => {
      tallies.met[index] = { state: plain(state), batteryV: null };
      const starterTurns = turns(solution.elementA);
      const short = starterTurns ? null : shortOf(state, solution.elementA);
      if (short !== null) {
        shorted.push(short);
        return;
      }
      const isStart = starterTurns || state.asIf === "cranking";
      tallyUp(isStart ? tallies.cranking : tallies.lasting, solution.elementA, index);
      loads.watch(state, solution, starterTurns);
    },
    worstIndices: () => [
      ...worstStates(tallies.lasting, elements, STEERING),
      ...worstStates(tallies.cranking, elements, STEERING),
    ],
    solveCountMax: SOLVE_COUNT_MAX,
  });
  const best = [...worstStates(tallies.lasting, elements, STEERING)].map((k) =>
    plain(search.states[k]!),
  );
  const fullA = stageOf(tallies.lasting);
  const keep = (state: QuickState, elementA: Float64Array, batteryV: number | null): void => {
    tallies.met.push({ state, batteryV });
    tallyUp(tallies.lasting, elementA, tallies.met.length - 1);
  };
  if (chargedV !== null) atVolts({ compiled, states: best, keep }, chargedV);
  const chargedA = stageOf(tallies.lasting);
  runningCurrents(compiled, best, (state, elementA) => keep(state, elementA, null));
  return { ...tallies, fullA, chargedA, loads: loads.seen(), shorted, complete: search.complete };
}

const plain = ({ positions, engine, flash }: FullState): QuickState => ({
  positions,
  engine,
  flash,
});

/** Some states once more, with the battery held at the volts the machine charges with. */
export function atVolts(
  from: {
    readonly compiled: CompiledJob;
    readonly states: readonly QuickState[];
    readonly keep: (state: QuickState, elementA: Float64Array, batteryV: number) => void;
  },
  emfV: number,
): void {
  const { solve } = withBattery(from.compiled, { emfV });
  for (const state of from.states) {
    const solution = solve(state);
    if (solution.converged) from.keep(state, solution.elementA, emfV);
  }
}

function startersOf({ job, jobNetwork }: CompiledJob): readonly number[] {
  const starters = new Set(
    presentParts(job)
      .filter((part) => part.kind === "motor" && part.use === "starter")
      .map((part) => part.id),
  );
  return jobNetwork.elements.flatMap(({ of, kind }, k) =>
    kind !== "wire" && of.includes(":") && starters.has(of.split(":")[0] ?? "") ? [k] : [],
  );
}
