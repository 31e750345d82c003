import type { PartOf } from "../job/index.ts";
import type { Figure } from "../messages/index.ts";
import { allTables, figure } from "../tables/index.ts";

/** What the number on a fuse may mean as a current it carries for ever, A. */
export interface FuseReading {
  /** Lowest and highest reading; equal where the marking leaves no doubt. */
  readonly lowA: number;
  readonly highA: number;
  /** The one reading, or null where nobody can tell which holds. */
  readonly continuousA: number | null;
  readonly figures: readonly Figure[];
}

/**
 * Reads a fuse's rating. A blow mark is about twice what the fuse carries; a printed chart says somewhat more. Protection leans on
 * the highest reading (the wire must survive it), load on the lowest.
 *
 * @source tables/protectionRules half-rule; tables/fuseMarkingConversion chart rows.
 */
export function fuseReading(fuse: PartOf<"fuse">): FuseReading {
  const { ratingA, marking } = fuse;
  if (marking === "continuous") {
    return { lowA: ratingA, highA: ratingA, continuousA: ratingA, figures: [] };
  }
  const half = figure("protectionRules", "half-rule", "value");
  const chartRow = allTables.fuseMarkingConversion.rows.find(
    (row) => row.rule === "chart" && row.markedBlowA === ratingA,
  );
  const chart = chartRow && figure("fuseMarkingConversion", chartRow.id, "continuousA");
  const lowA = ratingA * half.value;
  const figures = chart ? [half, chart] : [half];
  if (marking === "unknown") return { lowA, highA: ratingA, continuousA: null, figures };
  return { lowA, highA: Math.max(lowA, chart?.value ?? lowA), continuousA: lowA, figures };
}
