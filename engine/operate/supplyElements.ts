import { loadRef, type PartOf } from "../job/index.ts";
import { batterySource } from "./batterySource.ts";
import { type ElementDraft, FIXED } from "./jobElement.ts";
import type { NetworkContext } from "./networkContext.ts";

/** EMF behind its resistance, from the positive post to the negative one: its current is negative while it discharges. */
export function batteryElements(
  context: NetworkContext,
  part: PartOf<"battery">,
): readonly ElementDraft[] {
  const { ambientC, battery } = context.conditions;
  const { emfV, internalOhm } = batterySource(part, battery, ambientC);
  return [
    {
      kind: "emf",
      of: loadRef(part.id, [part.positivePin, part.negativePin]),
      from: context.inside(part, part.positivePin),
      to: context.inside(part, part.negativePin),
      law: { kind: "emf", emfV, internalOhm },
      role: FIXED,
    },
  ];
}
