import type { CompiledJob, QuickState } from "../operate/index.ts";
import { tallyUp } from "./currentTally.ts";
import { gatheredGroups } from "./gatheredGroups.ts";
import { atVolts, type GroupSearch } from "./groupSearch.ts";
import { loadTally } from "./loadTally.ts";
import type { FullState } from "./searchStates.ts";
import type { LoadSeen } from "./worstCase.ts";

/** One group with what was found of it. */
export interface SearchedGroup {
  readonly compiled: CompiledJob;
  readonly found: GroupSearch;
}

/** Bounds the states made of worst states of all groups in which drops are looked for once more. */
const TOGETHER_COUNT_MAX = 12;

/**
 * What was found of the groups, told of the whole machine, and added to it what happens when all of them draw at once: each in
 * its heaviest state (for what they have in common), and in turn each in a state that drops most at one of its loads.
 *
 * @param chargedV  what the regulator is set to, V; null where nothing charges the battery.
 */
export function joinedGroups(
  compiled: CompiledJob,
  groups: readonly SearchedGroup[],
  chargedV: number | null,
): GroupSearch {
  const whole = gatheredGroups(compiled, groups);
  const { lasting, met, fullA, chargedA } = whole;
  const loads = loadTally(compiled);
  const heaviest = together(groups.map(heaviestOf));
  const keep = (state: QuickState, elementA: Float64Array, batteryV: number | null): void => {
    met.push({ state, batteryV });
    tallyUp(lasting, elementA, met.length - 1);
    raise(chargedA, elementA);
  };
  for (const state of [heaviest, ...dropStates(groups)]) {
    const solution = compiled.solve(state);
    if (!solution.converged) continue;
    keep(state, solution.elementA, null);
    raise(fullA, solution.elementA);
    loads.watch(state, solution, false);
  }
  if (chargedV !== null) {
    atVolts({ compiled, states: [heaviest], keep }, chargedV);
  }
  const seen = loads.seen();
  return {
    ...whole,
    loads: new Map([...whole.loads].map(([ref, one]) => [ref, worseOf(one, seen.get(ref))])),
  };
}

function raise(mostA: Float64Array, elementA: Float64Array): void {
  for (let k = 0; k < mostA.length; k++) mostA[k] = Math.max(mostA[k]!, Math.abs(elementA[k]!));
}

/** The state in which a group draws most from the battery. */
function heaviestOf({ compiled, found: { lasting, met } }: SearchedGroup): QuickState {
  const battery = compiled.jobNetwork.elements.findIndex(({ kind }) => kind === "emf");
  return battery < 0 || lasting.mostA[battery] === 0 ? {} : met[lasting.at[battery]!]!.state;
}

function together(states: readonly QuickState[]): FullState {
  return {
    positions: Object.assign({}, ...states.map(({ positions }) => positions ?? {})),
    engine: { mode: "stopped" },
    flash: states.some(({ flash }) => flash === "on") ? "on" : "off",
    asIf: "stopped",
  };
}

/** States in which every group stands in one of its own that drop most at a load, each of those at least once. */
function dropStates(groups: readonly SearchedGroup[]): readonly FullState[] {
  const ofGroups = groups.map(({ found }) => [
    ...new Set([...found.loads.values()].flatMap(({ dropState }) => dropState ?? [])),
  ]);
  const count = Math.min(TOGETHER_COUNT_MAX, Math.max(...ofGroups.map(({ length }) => length)));
  return Array.from({ length: count }, (_, t) =>
    together(ofGroups.map((states) => states[t % states.length] ?? {})),
  );
}

/** What a load got in its group, and with all groups drawing. A drop while fewer things last a moment only counts first. */
function worseOf(own: LoadSeen, whole: LoadSeen | undefined): LoadSeen {
  if (whole === undefined) return own;
  const dropV = ({ drop }: LoadSeen): number => (drop === null ? -1 : drop.feedV + drop.returnV);
  const isCalm = whole.dropMomentCount <= own.dropMomentCount;
  const worst = isCalm && dropV(whole) > dropV(own) ? whole : own;
  const most = whole.mostW > own.mostW ? whole : own;
  return {
    ...own,
    drop: worst.drop,
    dropState: worst.dropState,
    dropMomentCount: worst.dropMomentCount,
    litCount: own.litCount + whole.litCount,
    mostW: most.mostW,
    mostState: most.mostState,
    mostA: Math.max(own.mostA, whole.mostA),
    reversedV: Math.max(own.reversedV, whole.reversedV),
    quietState: own.quietState ?? whole.quietState,
  };
}
