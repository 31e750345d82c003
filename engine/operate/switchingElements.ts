import { loadRef, type PartOf, pinRef } from "../job/index.ts";
import { allTables, figure } from "../tables/index.ts";
import { contactOhm } from "./contactOhm.ts";
import { type ElementDraft, type ElementRole, FIXED } from "./jobElement.ts";
import { siliconLaw } from "./lampLaw.ts";
import type { NetworkContext } from "./networkContext.ts";

type PinPair = readonly [string, string];

function contact(
  context: NetworkContext,
  part: PartOf<"switch"> | PartOf<"relay"> | PartOf<"flasher">,
  [a, b]: PinPair,
  role: ElementRole,
): ElementDraft {
  const row = part.kind === "switch" ? "switch" : "relay";
  return {
    kind: "contact",
    of: loadRef(part.id, [a, b]),
    from: context.inside(part, a),
    to: context.inside(part, b),
    law: { kind: "ohm", ohm: contactOhm(row, part.contactOhm, context.conditions.aged)! },
    role,
  };
}

const samePair = (one: PinPair, other: PinPair): boolean =>
  (one[0] === other[0] && one[1] === other[1]) || (one[0] === other[1] && one[1] === other[0]);

/** One contact for each pair of pins that any position joins, closed in the positions that join it. */
export function switchElements(
  context: NetworkContext,
  part: PartOf<"switch">,
): readonly ElementDraft[] {
  const pairs: PinPair[] = [];
  for (const { joins } of part.positions) {
    for (const pair of joins) if (!pairs.some((one) => samePair(one, pair))) pairs.push(pair);
  }
  return pairs.map((pair) => {
    const closedIn = part.positions
      .filter(({ joins }) => joins.some((one) => samePair(one, pair)))
      .map((position) => position.id);
    return contact(context, part, pair, { role: "switch", part: part.id, closedIn });
  });
}

/** Coil, the diode across it, and contacts made when pulled or released. */
export function relayElements(
  context: NetworkContext,
  part: PartOf<"relay">,
): readonly ElementDraft[] {
  const [first, second] = part.coil.pins;
  const [from, to] = [context.inside(part, first), context.inside(part, second)];
  const of = loadRef(part.id, [first, second]);
  const coil: ElementDraft = {
    kind: "coil",
    of,
    from,
    to,
    law: { kind: "ohm", ohm: part.coil.ohm.value },
    role: FIXED,
  };
  const diode: ElementDraft = {
    kind: "diode",
    of,
    from: to,
    to: from,
    law: siliconLaw(),
    role: FIXED,
  };
  const contacts = (pairs: readonly PinPair[], closedWhen: "pulled" | "released") =>
    pairs.map((pair) => contact(context, part, pair, { role: "relay", part: part.id, closedWhen }));
  return [
    coil,
    ...(part.coil.diode ? [diode] : []),
    ...contacts(part.made, "pulled"),
    ...contacts(part.rest, "released"),
  ];
}

/** The outputs of a box: joined while it is fed, as held closed by a relay whose coil is what the box draws. */
export function driverElements(
  context: NetworkContext,
  part: PartOf<"module">,
): readonly ElementDraft[] {
  const { driver } = part;
  if (driver === undefined) return [];
  return driver.outputs.map(([a, b]) => ({
    kind: "contact",
    of: loadRef(part.id, [a, b]),
    from: context.inside(part, a),
    to: context.inside(part, b),
    law: { kind: "ohm", ohm: driver.ohm.value },
    role: { role: "relay", part: part.id, closedWhen: "pulled" },
    ofLoad: true,
  }));
}

/** A flasher's own contact, closed in the lit half of its rhythm. */
export function flasherElements(
  context: NetworkContext,
  part: PartOf<"flasher">,
): readonly ElementDraft[] {
  return [contact(context, part, [part.feed, part.out], { role: "flasher" })];
}

/** A fuse: its cold resistance as stated, by type and rating, or that of a holder with its fuse; ageing adds the holder's share. */
export function fuseElements(
  context: NetworkContext,
  part: PartOf<"fuse">,
): readonly ElementDraft[] {
  const [a, b] = part.pins;
  if (a === undefined || b === undefined) return [];
  return [
    {
      kind: "fuse",
      of: part.id,
      from: context.inside(part, a.id),
      to: context.inside(part, b.id),
      law: { kind: "ohm", ohm: fuseOhm(part, context.conditions.aged) },
      role: FIXED,
      controlledBy: [a, b]
        .filter((pin) => pin.flyLead === undefined)
        .map((pin) => pinRef(part.id, pin.id)),
    },
  ];
}

function fuseOhm(part: PartOf<"fuse">, aged: boolean): number {
  const newOhm = contactOhm("fuse-holder", undefined, false)!;
  const ageing = aged ? contactOhm("fuse-holder", undefined, true)! - newOhm : 0;
  return (part.coldOhm?.value ?? tableColdOhm(part) ?? newOhm) + ageing;
}

function tableColdOhm(part: PartOf<"fuse">): number | null {
  const id = `${part.type}-${part.ratingA}`;
  const row = allTables.fuseRatings.rows.find((one) => one.id === id);
  return row === undefined || row.coldMohm === null
    ? null
    : figure("fuseRatings", id, "coldMohm").value / 1000;
}
