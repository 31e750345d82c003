import { type Refusal, refusal } from "../../messages/index.ts";
import type { JsonPath } from "../read/jsonPointer.ts";
import type { Problem } from "./problem.ts";

export const MOST_LISTED_COUNT = 200;

/** Problems as refusals: in the order of the text, at most 200, then how many are left. */
export function listRefusals(
  problems: readonly Problem[],
  lineOf: (path: JsonPath) => number | null,
): readonly Refusal[] {
  const placed = problems.map((problem) => ({ problem, line: lineOf(problem.path) }));
  const ordered = placed.sort((a, b) => (a.line ?? 0) - (b.line ?? 0));
  const listed = ordered
    .slice(0, MOST_LISTED_COUNT)
    .map(({ problem, line }) => problem.refusal(line));
  const count = ordered.length - listed.length;
  return count > 0 ? [...listed, restOf(count)] : listed;
}

export function restOf(count: number): Refusal {
  return refusal("more-problems", { pointer: "", line: null, found: `${count} more` }, { count });
}
