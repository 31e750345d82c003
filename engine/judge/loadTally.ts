import { batteryOf, type Job, type Load, loadsOf } from "../job/index.ts";
import {
  type CompiledJob,
  expectedOf,
  type QuickSolution,
  readState,
  restPositions,
} from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { type LoadDrop, loadDrop, type WayMap, wayMap } from "./loadDrop.ts";
import type { FullState } from "./searchStates.ts";
import type { LoadSeen } from "./worstCase.ts";

interface Tracked {
  readonly load: Load;
  readonly elementIndex: number;
  readonly litW: number;
  readonly isStarter: boolean;
  drop: LoadDrop | null;
  dropState: FullState | null;
  litCount: number;
  mostW: number;
  /** Of states as bright the one with fewest switches moved. */
  mostState: FullState | null;
  mostMovedCount: number;
  mostA: number;
  reversedV: number;
  quietState: FullState | null;
  quietA: number;
  /** Things that last a moment in the state of `drop`: the fewer, the more it tells. */
  dropMomentCount: number;
}

export interface LoadTally {
  /** @param starterTurns  what then drops is the starter's affair: only its own drop is kept. */
  readonly watch: (state: FullState, solution: QuickSolution, starterTurns: boolean) => void;
  readonly seen: () => ReadonlyMap<string, LoadSeen>;
}

/** In looking for the quietest state a switch moved from rest counts as much as this current, A: fewer moves are seen first. */
const MOVED_A = 1000;

/**
 * Keeps, for every load, the largest drop in a state it should work in, and how much it ever gets. A drop in a state that
 * lasts counts before one while a button is held or a flasher is lit.
 */
export function loadTally(compiled: CompiledJob): LoadTally {
  const { job, jobNetwork } = compiled;
  const loads = loadsOf(job);
  const refs = new Set(loads.map(({ ref }) => ref));
  const map = wayMap(jobNetwork.elements, jobNetwork.nodes.names.length, refs);
  const tracked = trackedLoads(compiled, loads);
  const unrest = unrestOf(job);
  const sources = [...map.sources];
  const base = readState(job, {});
  if (!base.ok) throw new Error("an empty request is no request");
  const isExpected = (ref: string, { positions, flash, asIf }: FullState): boolean => {
    const engine = { mode: asIf, speedRpm: 0 };
    return expectedOf(job, ref, { ...base.state, positions, flash, engine }) !== false;
  };
  const positiveEarth = job.supply.earthPolarity === "positive";
  const live = jobNetwork.nodes.indexOf.get(batteryOf(job)?.livePost ?? "");
  const batteryV = ({ nodeV }: QuickSolution): number =>
    live === undefined ? Number.POSITIVE_INFINITY : Math.abs(nodeV[live]!);
  return {
    watch: (state, solution, starterTurns) => {
      const { momentCount, movedCount } = unrest(state);
      const drawnA = sources.reduce((sum, k) => sum + Math.abs(solution.elementA[k]!), 0);
      for (const one of tracked) {
        const currentA = Math.abs(solution.elementA[one.elementIndex]!);
        const v = voltsOf(map, solution, one.elementIndex);
        const powerW = v * solution.elementA[one.elementIndex]!;
        const isBrighter = isMore(powerW, one.mostW);
        const isAsBright = powerW > 0 && !isMore(one.mostW, powerW);
        if (isBrighter || (isAsBright && movedCount < one.mostMovedCount)) {
          [one.mostState, one.mostMovedCount] = [state, movedCount];
        }
        if (powerW > one.mostW) one.mostW = powerW;
        if (currentA > one.mostA) one.mostA = currentA;
        if (-v > one.reversedV) one.reversedV = -v;
        if (powerW < one.litW) continue;
        one.litCount++;
        if (starterTurns !== one.isStarter || !isExpected(one.load.ref, state)) continue;
        const quietA = movedCount * MOVED_A + drawnA;
        if (isMore(one.quietA, quietA)) [one.quietA, one.quietState] = [quietA, state];
        // A way of its own loses what the battery gives less what the load gets: only a larger loss is worth tracing.
        if (momentCount > one.dropMomentCount) continue;
        const isCalmer = momentCount < one.dropMomentCount;
        const beforeV = one.drop === null || isCalmer ? -1 : one.drop.feedV + one.drop.returnV;
        const lostV = batteryV(solution) - powerW / currentA;
        if (lostV <= beforeV) continue;
        const drop = loadDrop(map, solution, { load: one.elementIndex, positiveEarth });
        if (drop === null) continue;
        if (!isMore(drop.feedV + drop.returnV, beforeV)) continue;
        [one.drop, one.dropState] = [drop, state];
        one.dropMomentCount = momentCount;
      }
    },
    seen: () => new Map(tracked.map((one) => [one.load.ref, seenOf(one)])),
  };
}

/** Of states alike the first stands, whatever a solve left in the last digits. */
const MORE_RATIO = 1e-7;
const isMore = (value: number, least: number): boolean =>
  value > least + MORE_RATIO * (1 + Math.abs(least));

/** How far a state is from rest: buttons held and flashers lit, which last a moment, and everything moved. */
function unrestOf(job: Job) {
  const rest = restPositions(job, "stopped");
  const momentary = job.parts.flatMap((part) =>
    part.kind === "switch" && part.momentary === true ? [part] : [],
  );
  return ({ positions, flash }: FullState) => {
    const heldCount = momentary.filter((part) => positions[part.id] !== part.rest).length;
    const moved = Object.keys(positions).filter((part) => positions[part] !== rest[part]);
    const flashCount = flash === "on" ? 1 : 0;
    return { momentCount: heldCount + flashCount, movedCount: moved.length + flashCount };
  };
}

function voltsOf(map: WayMap, { nodeV }: QuickSolution, elementIndex: number): number {
  const [a, b] = map.elements[elementIndex]!.nodes;
  return nodeV[a]! - nodeV[b]!;
}

const seenOf = (one: Tracked): LoadSeen => ({
  load: one.load,
  drop: one.drop,
  dropState: one.dropState,
  dropMomentCount: one.dropMomentCount,
  litCount: one.litCount,
  mostW: one.mostW,
  mostState: one.mostState,
  mostA: one.mostA,
  reversedV: one.reversedV,
  quietState: one.quietState,
});

const UNSEEN = {
  drop: null,
  dropState: null,
  litCount: 0,
  mostW: 0,
  mostState: null,
  mostMovedCount: Number.POSITIVE_INFINITY,
  mostA: 0,
  reversedV: 0,
  quietState: null,
  quietA: Number.POSITIVE_INFINITY,
  dropMomentCount: Number.POSITIVE_INFINITY,
};

function trackedLoads({ job, jobNetwork }: CompiledJob, loads: readonly Load[]): Tracked[] {
  const placeOf = new Map(
    jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  const share = figure("lampLaws", "lit-share", "value").value;
  return loads.flatMap((load) => {
    const elementIndex = placeOf.get(load.ref);
    if (elementIndex === undefined) return [];
    const ratedW = load.ratedW ?? job.supply.nominalV ** 2 / (load.resistanceOhm ?? Infinity);
    const isStarter = load.part.kind === "motor" && load.part.use === "starter";
    return [{ load, elementIndex, litW: share * ratedW, isStarter, ...UNSEEN }];
  });
}
