import type { Operation, Remedy } from "@copperwright/engine";
import type { Consequence } from "../../engine/engineApi.ts";
import { changedCounts } from "../../frame/changedCounts.ts";
import { verdictWord } from "../../frame/verdictWord.ts";
import type { SpokenFinding } from "./findingRows.ts";

/** The changes of a remedy as one act; null where it is only words. */
export function operationOf({ change }: Remedy, finding: SpokenFinding): Operation | null {
  const operations = change as readonly Operation[];
  if (operations.length === 0) return null;
  if (operations.length === 1) return operations[0]!;
  return { op: "batch", name: `Mend ${finding.subject.id}`, operations };
}

/** What a change would do to the check, told before it is made. */
export function consequenceText(consequence: Consequence | null): string {
  if (consequence === null) return "being tried";
  if (!consequence.ok) return `cannot be done: ${consequence.refusals[0]?.message ?? ""}`;
  const changed = changedCounts(consequence);
  return `${changed.length === 0 ? "the check's counts stay" : changed.join(" · ")} · verdict then: ${verdictWord(consequence.verdict)}`;
}

/** Fewer of the graver kind, with none graver still. */
export function isBetter(consequence: Consequence): boolean {
  if (!consequence.ok) return false;
  const { before, after } = consequence;
  for (const name of ["stop", "notProven", "mend"] as const) {
    if (after[name] !== before[name]) return after[name] < before[name];
  }
  return false;
}
