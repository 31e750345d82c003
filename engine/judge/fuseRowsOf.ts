import type { CheckFuseRow } from "./checkResult.ts";
import type { FuseFacts } from "./fuseFacts.ts";

/** One row for every fuse, by id. */
export function fuseRowsOf(facts: readonly FuseFacts[]): readonly CheckFuseRow[] {
  return facts.map((one) => ({
    fuse: one.fuse.id,
    ratingA: one.fuse.ratingA,
    marking: one.fuse.marking,
    continuousA: one.reading.continuousA,
    type: one.fuse.type,
    protects: one.protects,
    weakestWire: one.weakestWire,
    windowMinA: one.choice?.windowMinA ?? null,
    windowMaxA: one.choice?.windowMaxA ?? null,
    worstLoadA: one.worstLoadA,
    dies: one.dies,
    unfusedMm: one.unfusedMm,
  }));
}
