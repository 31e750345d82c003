import { batteryOf, type Load, loadsOf } from "../job/index.ts";
import { type CompiledJob, expectedOf, type QuickSolution, readState } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { type LoadDrop, loadDrop, type WayMap, wayMap } from "./loadDrop.ts";
import type { FullState } from "./searchStates.ts";
import type { LoadSeen } from "./worstCase.ts";

interface Tracked {
  readonly load: Load;
  readonly place: number;
  readonly litW: number;
  readonly isStarter: boolean;
  drop: LoadDrop | null;
  dropState: FullState | null;
  litCount: number;
  mostW: number;
  mostState: FullState | null;
  mostA: number;
  reversedV: number;
  quietState: FullState | null;
  quietA: number;
}

export interface LoadTally {
  /** @param starterTurns  what then drops is the starter's affair: only its own drop is kept. */
  readonly watch: (state: FullState, solution: QuickSolution, starterTurns: boolean) => void;
  readonly seen: () => ReadonlyMap<string, LoadSeen>;
}

/** Keeps, for every load, the largest drop in a state it should work in, and how much it ever gets. */
export function loadTally(compiled: CompiledJob): LoadTally {
  const { job, jobNetwork } = compiled;
  const loads = loadsOf(job);
  const refs = new Set(loads.map(({ ref }) => ref));
  const map = wayMap(jobNetwork.elements, jobNetwork.nodes.names.length, refs);
  const tracked = trackedLoads(compiled, loads);
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
      const drawnA = sources.reduce((sum, k) => sum + Math.abs(solution.elementA[k]!), 0);
      for (const one of tracked) {
        const currentA = Math.abs(solution.elementA[one.place]!);
        const v = voltsOf(map, solution, one.place);
        const powerW = v * solution.elementA[one.place]!;
        if (powerW > one.mostW) [one.mostW, one.mostState] = [powerW, state];
        if (currentA > one.mostA) one.mostA = currentA;
        if (-v > one.reversedV) one.reversedV = -v;
        if (powerW < one.litW) continue;
        one.litCount++;
        if (starterTurns !== one.isStarter || !isExpected(one.load.ref, state)) continue;
        if (drawnA < one.quietA) [one.quietA, one.quietState] = [drawnA, state];
        // A way of its own loses what the battery gives less what the load gets: only a larger loss is worth tracing.
        const beforeV = one.drop === null ? -1 : one.drop.feedV + one.drop.returnV;
        const lostV = batteryV(solution) - powerW / currentA;
        if (lostV <= beforeV) continue;
        const drop = loadDrop(map, solution, { load: one.place, positiveEarth });
        if (drop === null) continue;
        if (drop.feedV + drop.returnV > beforeV) [one.drop, one.dropState] = [drop, state];
      }
    },
    seen: () => new Map(tracked.map((one) => [one.load.ref, seenOf(one)])),
  };
}

function voltsOf(map: WayMap, { nodeV }: QuickSolution, place: number): number {
  const [a, b] = map.elements[place]!.nodes;
  return nodeV[a]! - nodeV[b]!;
}

const seenOf = (one: Tracked): LoadSeen => ({
  load: one.load,
  drop: one.drop,
  dropState: one.dropState,
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
  mostA: 0,
  reversedV: 0,
  quietState: null,
  quietA: Number.POSITIVE_INFINITY,
};

function trackedLoads({ job, jobNetwork }: CompiledJob, loads: readonly Load[]): Tracked[] {
  const placeOf = new Map(
    jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  const share = figure("lampLaws", "lit-share", "value").value;
  return loads.flatMap((load) => {
    const place = placeOf.get(load.ref);
    if (place === undefined) return [];
    const ratedW = load.ratedW ?? job.supply.nominalV ** 2 / (load.resistanceOhm ?? Infinity);
    const isStarter = load.part.kind === "motor" && load.part.use === "starter";
    return [{ load, place, litW: share * ratedW, isStarter, ...UNSEEN }];
  });
}
