import { pinRef, presentParts } from "../../job/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** Fly leads that nothing is joined to although a battery reaches them: a bare end that is live. */
export const looseLiveEnd: Judge = ({ job, wiresAt, protection }) => {
  const bonded = new Set(job.bonds.flatMap(({ from, to }) => [from, to]));
  const loose = presentParts(job)
    .flatMap((part) =>
      part.pins.filter(({ flyLead }) => flyLead !== undefined).map(({ id }) => pinRef(part.id, id)),
    )
    .filter((pin) => !wiresAt.has(pin) && !bonded.has(pin))
    .filter((pin) =>
      (protection.guards.get(pin) ?? []).some(
        ({ sourceKind, via }) => sourceKind === "battery" && via === null,
      ),
    )
    .sort();
  const [first, ...others] = loose;
  if (first === undefined) return [];
  return [
    findingOf({
      code: "loose-live-end",
      severity: "mend",
      subject: { kind: "flyLead", id: first },
      also: others,
      numbers: {},
      limit: null,
    }),
  ];
};
