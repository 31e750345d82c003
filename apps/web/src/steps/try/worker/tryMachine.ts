import { flashesPerMinute, type Job, type PinPlace } from "@copperwright/engine";
import type { Held } from "../../../engine/held.ts";

export interface TrySwitch {
  readonly id: string;
  readonly name: string;
  readonly driven: "hand" | "machine" | "engine";
  readonly isMomentary: boolean;
  readonly rest: string;
  /** Position taken with the engine, where it follows it. */
  readonly follows: Readonly<Record<"stopped" | "cranking" | "running", string>> | null;
  readonly pins: readonly string[];
  readonly positions: readonly {
    readonly id: string;
    readonly word: string;
    readonly joins: readonly (readonly string[])[];
  }[];
}

/** Things with pins, front to rear: where a lead can be put and what can be broken. */
export interface PinOwnerRow {
  readonly owner: string;
  readonly label: string;
  readonly station: string | null;
  readonly pins: readonly { readonly ref: string; readonly label: string }[];
}

export interface TryWire {
  readonly id: string;
  readonly label: string;
  readonly from: string;
  readonly to: string;
  readonly colour: { readonly main: string; readonly tracer?: string | undefined } | null;
  /** Wires it lies against somewhere. */
  readonly neighbours: readonly string[];
}

export interface TryMachine {
  readonly switches: readonly TrySwitch[];
  readonly hasFlasher: boolean;
  readonly flashesPerMinute: number;
  readonly hasEarth: boolean;
  readonly owners: readonly PinOwnerRow[];
  readonly wires: readonly TryWire[];
  /** Where a contact, an earth or a fuse can open or go bad. */
  readonly places: readonly {
    readonly group: string;
    readonly ref: string;
    readonly label: string;
  }[];
}

export function tryMachine(held: Held): TryMachine {
  const { design } = held.checked();
  const { job, routed, pins } = design;
  return {
    switches: switchesOf(job),
    hasFlasher: job.parts.some(({ kind }) => kind === "flasher"),
    flashesPerMinute: flashesPerMinute(),
    hasEarth: job.bodies.length > 0,
    owners: ownersOf(job, pins),
    wires: job.wires.map(({ id, number, from, to, colour }) => ({
      id,
      label: number ?? id,
      from,
      to,
      colour: colour ?? null,
      neighbours: [...new Set((routed.stretchesOfWire.get(id) ?? []).flatMap(({ wires }) => wires))]
        .filter((one) => one !== id && !one.includes("."))
        .sort(),
    })),
    places: placesOf(job),
  };
}

const DRIVEN_ORDER = { hand: 0, machine: 1, engine: 2 } as const;

function switchesOf(job: Job): readonly TrySwitch[] {
  return job.parts
    .flatMap((part) => (part.kind === "switch" && part.status !== "remove" ? [part] : []))
    .map((part): TrySwitch => {
      const used = new Set(part.positions.flatMap(({ joins }) => joins.flat()));
      return {
        id: part.id,
        name: part.name || part.id,
        driven: part.driven,
        isMomentary: part.momentary ?? false,
        rest: part.rest,
        follows: part.follows ?? null,
        pins: part.pins.map(({ id }) => id).filter((id) => used.has(id)),
        positions: part.positions.map(({ id, name, joins }) => ({
          id,
          word: name || id,
          joins: groupsOf(joins),
        })),
      };
    })
    .sort(
      (a, b) =>
        DRIVEN_ORDER[a.driven] - DRIVEN_ORDER[b.driven] ||
        Number(a.isMomentary) - Number(b.isMomentary),
    );
}

/** Pins joined to each other, by way of others too, as one group. */
function groupsOf(pairs: readonly (readonly [string, string])[]): readonly (readonly string[])[] {
  let groups: (readonly string[])[] = [];
  for (const pair of pairs) {
    const met = groups.filter((group) => group.some((pin) => pair.includes(pin)));
    const rest = groups.filter((group) => !met.includes(group));
    groups = [...rest, [...new Set([...met.flat(), ...pair])]];
  }
  return groups;
}

function ownersOf(job: Job, pins: ReadonlyMap<string, PinPlace>): readonly PinOwnerRow[] {
  const order = new Map(
    [...job.stations]
      .sort((a, b) => (job.layout.side?.[a.id]?.xMm ?? 1e9) - (job.layout.side?.[b.id]?.xMm ?? 1e9))
      .map(({ id }, k) => [id, k]),
  );
  const rows = new Map<string, PinOwnerRow & { pins: { ref: string; label: string }[] }>();
  for (const place of pins.values()) {
    const { owner, ref, pinId, station } = place;
    const row = rows.get(owner) ?? { owner, label: nameOf(place), station, pins: [] };
    row.pins.push({ ref, label: pinId });
    rows.set(owner, row);
  }
  const rank = ({ station }: PinOwnerRow): number =>
    station === null ? 1e6 : (order.get(station) ?? 1e6);
  return [...rows.values()].sort((a, b) => rank(a) - rank(b) || (a.owner < b.owner ? -1 : 1));
}

function nameOf(place: PinPlace): string {
  switch (place.ownerKind) {
    case "part":
      return place.part.name || place.owner;
    case "joint":
      return place.joint.name || place.owner;
    case "connector":
      return place.connector.name || place.owner;
    default:
      return place.body.name || place.owner;
  }
}

function placesOf(job: Job): TryMachine["places"] {
  const named = (id: string, name: string | undefined): string => (name ? `${id}, ${name}` : id);
  return [
    ...job.parts.flatMap((part) =>
      part.kind === "fuse" && part.status !== "remove"
        ? [{ group: "Fuses", ref: part.id, label: named(part.id, part.name) }]
        : [],
    ),
    ...job.bodies.flatMap((body) =>
      body.points.map(({ id, name }) => ({
        group: "Earth points",
        ref: `${body.id}.${id}`,
        label: `${body.name} ${name ?? id}`,
      })),
    ),
    ...job.bonds.map(({ id, from, to }) => ({
      group: "Earth points",
      ref: id,
      label: `${id}, ${from} to ${to}`,
    })),
    ...job.connectors.flatMap(({ id, name, cavities }) =>
      cavities.map((cavity) => ({
        group: "Connector cavities",
        ref: `${id}.${cavity}p`,
        label: `${named(id, name)}, cavity ${cavity}`,
      })),
    ),
    ...job.joints.flatMap(({ id, name, ways }) =>
      ways.map((way) => ({
        group: "Joints",
        ref: `${id}.${way}`,
        label: `${named(id, name)}, way ${way}`,
      })),
    ),
    ...job.parts.flatMap(({ id, name, kind, status, pins }) =>
      kind === "fuse" || status === "remove"
        ? []
        : pins.map((pin) => ({
            group: "Contacts of parts",
            ref: `${id}.${pin.id}`,
            label: `${name || id}, ${pin.id}`,
          })),
    ),
  ];
}
