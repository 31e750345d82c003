import type { Remedy } from "../../messages/index.ts";
import type { FuseChoice } from "../../size/index.ts";

/** So many circuits, each behind a fuse of its own; null where the window is open or no standard fuse suits the wire. */
export function splitRemedy(choice: FuseChoice | null): Remedy | null {
  const { circuitCount = null, loadEachA = null } = choice?.remedies ?? {};
  if (circuitCount === null || circuitCount < 2) return null;
  return { kind: "split", change: [], cures: null, newNumbers: { circuitCount, loadEachA } };
}
