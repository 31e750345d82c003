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

/** Parts, joints and connectors with wires on them and no place on the machine, in a job that has places. */
export const placeUnknown: Judge = ({ job, pins, wiresAt }) => {
  if (job.stations.length === 0) return [];
  const placed = new Set(
    job.joints.filter(({ offset }) => offset !== undefined).map(({ id }) => id),
  );
  const nowhere = new Map<string, "part" | "joint" | "connector">();
  for (const [pin, wires] of wiresAt) {
    const place = pins.get(pin);
    if (place === undefined || place.ownerKind === "body" || place.station !== null) continue;
    if (placed.has(place.owner) || wires.every(({ lengthMm }) => lengthMm !== undefined)) continue;
    nowhere.set(place.owner, place.ownerKind);
  }
  const [first, ...others] = [...nowhere].sort(([a], [b]) => (a < b ? -1 : 1));
  if (first === undefined) return [];
  return [
    findingOf({
      code: "place-unknown",
      severity: "advise",
      subject: { kind: first[1], id: first[0] },
      also: others.map(([id]) => id),
      numbers: { placeCount: others.length + 1 },
      limit: null,
    }),
  ];
};
