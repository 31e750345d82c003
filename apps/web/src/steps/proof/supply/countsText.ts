import type { Counts } from "../../../engine/engineApi.ts";

const SAID = [
  ["stop", "stop"],
  ["notProven", "not proven"],
  ["mend", "mend"],
  ["advise", "advise"],
] as const;

/** Findings by their weight, those there are. */
export function countsText(counts: Counts): string {
  const told = SAID.flatMap(([key, word]) => (counts[key] > 0 ? [`${counts[key]} ${word}`] : []));
  return told.length === 0 ? "no findings" : told.join(", ");
}
