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
      for (const one of tracked) {
        const powerW = powerOf(map, solution, one.place);
        if (powerW > one.mostW) [one.mostW, one.mostState] = [powerW, state];
        if (powerW < one.litW) continue;
        one.litCount++;
        if (starterTurns !== one.isStarter || !isExpected(one.load.ref, state)) continue;
        // A way of its own loses what the battery gives less what the load gets: only a larger loss is worth tracing.
        const beforeV = one.drop === null ? -1 : one.drop.feedV + one.drop.returnV;
        const lostV = batteryV(solution) - powerW / Math.abs(solution.elementA[one.place]!);
        if (lostV <= beforeV) continue;
        const drop = loadDrop(map, solution, { load: one.place, positiveEarth });
        if (drop === null) continue;
        if (drop.feedV + drop.returnV > beforeV) [one.drop, one.dropState] = [drop, state];
      }
    },
    seen: () => new Map(tracked.map((one) => [one.load.ref, seenOf(one)])),
  };
}

function powerOf(map: WayMap, { nodeV, elementA }: QuickSolution, place: number): number {
  const [a, b] = map.elements[place]!.nodes;
  return (nodeV[a]! - nodeV[b]!) * elementA[place]!;
}

const seenOf = ({ load, drop, dropState, litCount, mostW, mostState }: Tracked): LoadSeen => ({
  load,
  drop,
  dropState,
  litCount,
  mostW,
  mostState,
});

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
    const fresh = { drop: null, dropState: null, litCount: 0, mostW: 0, mostState: null };
    return [{ load, place, litW: share * ratedW, isStarter, ...fresh }];
  });
}
