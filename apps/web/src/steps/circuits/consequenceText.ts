import type { Consequence, Counts } from "../../engine/engineApi.ts";

const WORDS: readonly { readonly key: keyof Counts; readonly word: string }[] = [
  { key: "stop", word: "stop" },
  { key: "mend", word: "mend" },
  { key: "notProven", word: "not proven" },
  { key: "advise", word: "advise" },
];

/** What a change leads to: every count that would change, worst first. */
export function consequenceText(outcome: Consequence): string {
  if (!outcome.ok) return `cannot be done: ${outcome.refusals[0]?.message ?? "it does not fit"}`;
  const { before, after } = outcome;
  const changed = WORDS.filter(({ key }) => before[key] !== after[key]).map(
    ({ key, word }) => `${word} ${before[key]} → ${after[key]}`,
  );
  return changed.length === 0 ? "no count changes" : changed.join(", ");
}
