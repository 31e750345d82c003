import type { Consequence } from "../../engine/engineApi.ts";
import { changedCounts } from "../../frame/changedCounts.ts";

/** What a change leads to: every count that would change, worst first. */
export function consequenceText(outcome: Consequence): string {
  if (!outcome.ok) return `cannot be done: ${outcome.refusals[0]?.message ?? "it does not fit"}`;
  const changed = changedCounts(outcome);
  return changed.length === 0 ? "no count changes" : changed.join(", ");
}
