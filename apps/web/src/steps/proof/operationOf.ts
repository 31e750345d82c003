import type { Operation, Remedy } from "@copperwright/engine";
import type { Consequence } from "../../engine/engineApi.ts";
import type { SpokenFinding } from "./findingRows.ts";

/** The changes of a remedy as one act; null where it is only words. */
export function operationOf({ change }: Remedy, finding: SpokenFinding): Operation | null {
  const operations = change as readonly Operation[];
  if (operations.length === 0) return null;
  if (operations.length === 1) return operations[0]!;
  return { op: "batch", name: `Mend ${finding.subject.id}`, operations };
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
