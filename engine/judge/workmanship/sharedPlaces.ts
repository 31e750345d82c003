import type { EndFitting } from "../../size/index.ts";
import { bulletRanges, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** Ends that may lie on each other: rings on a stud, and splices, which are judged as joints. */
const STACKED: ReadonlySet<EndFitting["kind"]> = new Set(["ring", "splice", "soldered"]);

/**
 * Several wires in a barrel or cavity meant for one. Two wires that fill a blade's barrel within its range are an old habit and
 * advice; three, a seal, a bullet or a cavity of a plug are not.
 */
export const barrelShared: Judge = (design) => {
  const seen = new Set<string>();
  const shared = design.fittings.filter(
    ({ sharedWith, kind, pin }) =>
      sharedWith.length > 0 && !STACKED.has(kind) && !seen.has(pin) && seen.add(pin),
  );
  const isMend = ({ pin, sharedWith, kind, problem }: EndFitting): boolean =>
    sharedWith.length > 1 ||
    kind !== "blade" ||
    problem !== null ||
    design.pins.get(pin)?.ownerKind === "connector";
  return [shared.filter(isMend), shared.filter((one) => !isMend(one))].flatMap((group) => {
    const most = [...group].sort((a, b) => b.sharedWith.length - a.sharedWith.length)[0];
    if (most === undefined) return [];
    return findingOf({
      code: "barrel-shared",
      severity: isMend(most) ? "mend" : "advise",
      subject: { kind: "pin", id: most.pin },
      also: group.map(({ pin }) => pin).filter((pin) => pin !== most.pin),
      numbers: {
        wireCount: most.sharedWith.length + 1,
        wires: [most.wire, ...most.sharedWith].sort().join(", "),
        terminal: most.terminal ?? most.size,
      },
      limit: null,
    });
  });
};

/** More rings than one stud holds flat. */
export const studCrowded: Judge = (design) => {
  const limit = figure("workmanshipRules", "rings", "value");
  const crowded = [...ringPlaces(design)]
    .filter(([, wires]) => wires.length > limit.value)
    .sort(([a, some], [b, more]) => more.length - some.length || (a < b ? -1 : 1));
  const [first, ...others] = crowded;
  if (first === undefined) return [];
  const [place, wires] = first;
  const pile = figure("workmanshipRules", "rings-pile", "value");
  const isPile = wires.length >= pile.value;
  const isJoint = design.job.joints.some(({ id }) => id === place);
  return [
    findingOf({
      code: isPile ? "stud-pile" : "stud-crowded",
      severity: isPile ? "mend" : "advise",
      subject: { kind: isJoint ? "joint" : "pin", id: place },
      also: others.map(([id]) => id),
      numbers: {
        ringCount: wires.length,
        others:
          others.length === 0 ? null : others.map(([id, on]) => `${id} (${on.length})`).join(", "),
      },
      limit: isPile ? pile : limit,
    }),
  ];
};

/** Wires on each stud: a pin with a stud, a point of a body, a stack of rings. */
function ringPlaces({ job, wiresAt, pins }: Design): ReadonlyMap<string, readonly string[]> {
  const found = new Map<string, string[]>();
  for (const [pin, wires] of wiresAt) {
    const place = pins.get(pin);
    const hasStud =
      place?.ownerKind === "body" ||
      (place?.ownerKind === "part" &&
        place.part.pins.some(({ id, stud }) => id === place.pinId && stud !== undefined));
    const stack = place?.ownerKind === "joint" && place.joint.kind === "ring-stack";
    const key = stack ? place.owner : hasStud ? pin : null;
    if (key === null) continue;
    found.set(key, [...(found.get(key) ?? []), ...wires.map(({ id }) => id)]);
  }
  for (const { from, to } of job.bonds) {
    for (const pin of [from, to]) if (found.has(pin)) found.get(pin)!.push("strap");
  }
  return new Map([...found].map(([key, ids]) => [key, ids.sort()]));
}

/** Bullets that nobody measured: they are sold under names that do not agree. */
export const bulletUnmeasured: Judge = (design) => {
  const bullets = design.fittings.filter(({ kind }) => kind === "bullet");
  const stated = new Set([
    ...bullets.flatMap(({ chosenBy, terminal }) => (chosenBy === "person" ? [terminal] : [])),
    ...design.job.parts.flatMap(({ pins }) =>
      pins.flatMap(({ flyLead }) =>
        flyLead?.terminal?.startsWith("bullet-") ? [flyLead.terminal] : [],
      ),
    ),
  ]);
  const [first, ...others] = bullets;
  if (first === undefined || stated.size === 1) return [];
  const diameters = [...stated].filter((id) => id !== null).sort();
  return [
    findingOf({
      code: stated.size === 0 ? "bullet-unmeasured" : "bullets-differ",
      severity: "advise",
      subject: { kind: "wire", id: first.wire },
      also: others.map(({ wire }) => wire).filter((id) => id !== first.wire),
      numbers: {
        assumed: first.terminal,
        bullets: diameters.length === 0 ? null : diameters.join(", "),
        knownMm: [...new Set(bulletRanges.map(({ pinMm }) => pinMm))].sort().join(", "),
      },
      limit: null,
    }),
  ];
};
