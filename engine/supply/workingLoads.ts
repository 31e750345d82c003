import { type Job, type Load, loadsOf } from "../job/index.ts";
import type { CompiledJob, QuickSolution } from "../operate/index.ts";
import { figure } from "../tables/index.ts";

/** A load with the place of its element in the network. */
export interface PlacedLoad {
  readonly load: Load;
  readonly place: number;
  readonly ratedW: number;
}

/** Every load that is an element of the network, in document order. */
export function placedLoads({ job, jobNetwork }: CompiledJob): readonly PlacedLoad[] {
  const placeOf = new Map(
    jobNetwork.elements.flatMap(({ of, kind }, k) =>
      kind === "contact" ? [] : [[of, k] as const],
    ),
  );
  return loadsOf(job).flatMap((load) => {
    const place = placeOf.get(load.ref);
    if (place === undefined) return [];
    return [{ load, place, ratedW: ratedWatts(job, load) }];
  });
}

const ratedWatts = (job: Job, load: Load): number =>
  load.ratedW ?? job.supply.nominalV ** 2 / (load.resistanceOhm ?? Number.POSITIVE_INFINITY);

/** Volts across an element and watts it takes. */
export function readingOf(
  { jobNetwork }: CompiledJob,
  { nodeV, elementA }: Pick<QuickSolution, "nodeV" | "elementA">,
  place: number,
): { readonly v: number; readonly currentA: number; readonly powerW: number } {
  const [a, b] = jobNetwork.elements[place]!.nodes;
  const v = nodeV[a]! - nodeV[b]!;
  const currentA = elementA[place]!;
  return { v, currentA, powerW: v * currentA };
}

/** References of the loads that take at least the share of their rated power from which a lamp is called lit. */
export function workingRefs(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  solution: Pick<QuickSolution, "nodeV" | "elementA">,
): ReadonlySet<string> {
  const shareRatio = figure("lampLaws", "lit-share", "value").value;
  return new Set(
    loads
      .filter(
        ({ place, ratedW }) => readingOf(compiled, solution, place).powerW >= shareRatio * ratedW,
      )
      .map(({ load }) => load.ref),
  );
}
