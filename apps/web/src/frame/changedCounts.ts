import type { Consequence } from "../engine/engineApi.ts";
import { verdictWord } from "./verdictWord.ts";

/** Counts of a check from the gravest to the least, with the word each goes by. */
export const COUNTED = [
  ["stop", "stop"],
  ["notProven", "not-proven"],
  ["mend", "mend"],
  ["advise", "advise"],
] as const;

/** Every count a change would alter: "stop 1 → 0". */
export function changedCounts({
  before,
  after,
}: Extract<Consequence, { ok: true }>): readonly string[] {
  return COUNTED.filter(([key]) => before[key] !== after[key]).map(
    ([key, word]) => `${verdictWord(word)} ${before[key]} → ${after[key]}`,
  );
}
