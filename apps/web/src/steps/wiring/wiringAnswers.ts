import {
  addBond,
  addEarthPoint,
  addLoom,
  connectorInWires,
  type Hanging,
  type Holder,
  hangingOn,
  idMaker,
  insertJoint,
  type Operation,
  placeJoint,
  plugSides,
  putInLoom,
  removeWhole,
  type TakenAway,
  takeAway,
  viaAround,
  wireThrough,
} from "@copperwright/engine";
import type { Held } from "../../engine/held.ts";
import type { Where, WiringChange } from "./wiringChange.ts";

/** The way of a wire as places a joint or connector could have on it. */
export interface WireWay {
  readonly stations: readonly string[];
  readonly runs: readonly string[];
}

export interface WiringMade {
  readonly operation: Operation;
  /** Of what is new; null where nothing is, or it was there before. */
  readonly id: string | null;
  /** Wires asked for that could not be cut, because they come and go on one side. */
  readonly leftOut: readonly string[];
}

export const wiringAnswers = {
  wiringWay(held: Held, wire: string): WireWay {
    const route = held.checked().design.routed.wires.get(wire);
    if (route === undefined) return { stations: [], runs: [] };
    return { stations: route.stations, runs: [...new Set(route.steps.map(({ run }) => run))] };
  },

  /** Wires that pass a station on their way, or have an end there; without a station all of them. */
  wiringPassing(held: Held, station: string | null): readonly string[] {
    const { wires } = held.checked().design.routed;
    return held.job.wires
      .filter(({ id }) => station === null || wires.get(id)?.stations.includes(station))
      .map(({ id }) => id);
  },

  /** Wires that lie in a run. */
  wiringInRun(held: Held, run: string): readonly string[] {
    const { wires } = held.checked().design.routed;
    return held.job.wires
      .filter(({ id }) => wires.get(id)?.steps.some((step) => step.run === run))
      .map(({ id }) => id);
  },

  wiringTakeAway: (held: Held, { holder, id }: { holder: Holder; id: string }): TakenAway =>
    takeAway(held.job, holder, id),

  /** What hangs on a thing, and why it cannot be taken away; null: it can. */
  wiringHanging(
    held: Held,
    { holder, id }: { holder: Holder; id: string },
  ): { readonly hanging: Hanging; readonly refusal: string | null } {
    const taken = takeAway(held.job, holder, id);
    const hanging = hangingOn(held.job, holder, id);
    return { hanging, refusal: taken.ok ? null : taken.refusals[0]!.message };
  },

  wiringMade: (held: Held, change: WiringChange): WiringMade => wiringMade(held, change),
};

function wiringMade(held: Held, change: WiringChange): WiringMade {
  const { job } = held;
  switch (change.does) {
    case "joint":
      return jointMade(held, change);
    case "connector":
      return connectorMade(held, change);
    case "through":
      return done(wireThrough(job, { wire: change.wire, pin: change.pin, ...viaOf(held, change) }));
    case "place-joint":
      return done(placeJoint(change.id, placeOf(change.where)));
    case "bond":
      return { ...addBond(job, change), leftOut: [] };
    case "point":
      return done(addEarthPoint(job, change));
    case "loom":
      return { ...addLoom(job, change), leftOut: [] };
    case "put-in-loom":
      return done(putInLoom(job, change.loom, change.wires));
    case "remove-whole":
      return done(removeWhole(job, change.list, change.id));
  }
}

const done = (operation: Operation): WiringMade => ({ operation, id: null, leftOut: [] });

function jointMade(held: Held, change: Extract<WiringChange, { does: "joint" }>): WiringMade {
  const { job } = held;
  const nextId = idMaker(job);
  const place = placeOf(change.where);
  const id = nextId("J");
  const joint = {
    id,
    kind: change.kind,
    ways: ["1", "2", "3"],
    status: "new" as const,
    ...(change.name === "" ? {} : { name: change.name }),
    ...(place === null ? {} : jointPlace(place)),
  };
  if (change.wire === null) {
    return { operation: { op: "add", list: "joints", item: joint }, id, leftOut: [] };
  }
  const cut = { wire: change.wire, joint, ways: ["1", "2"] as const, newWire: nextId("W") };
  const via = viaAt(held, change.wire, change.where);
  return { operation: insertJoint(job, { ...cut, ...via }), id, leftOut: [] };
}

function connectorMade(
  held: Held,
  change: Extract<WiringChange, { does: "connector" }>,
): WiringMade {
  const { job } = held;
  const { into, kind, name, wires } = change;
  const station = job.connectors.find(({ id }) => id === into)?.station ?? change.station;
  const sides = plugSides(job, held.checked().design.routed, { station, connector: into }, wires);
  const where = station === null ? null : { kind: "station" as const, station };
  const cuts = sides.wires.map((cut) => ({ ...cut, ...viaAt(held, cut.wire, where) }));
  const { operation, id } = connectorInWires(job, { wires: cuts, into, kind, station, name });
  return { operation, id, leftOut: sides.sameSide };
}

type JointPlace = NonNullable<Parameters<typeof placeJoint>[1]>;

const placeOf = (where: Where | null): JointPlace | null =>
  where === null
    ? null
    : where.kind === "station"
      ? { station: where.station }
      : { run: where.run, offsetMm: where.mm };

const jointPlace = (place: JointPlace) =>
  "station" in place
    ? place
    : { offset: { run: place.run, mm: { value: place.offsetMm, basis: "chosen" as const } } };

type Via = { readonly via?: { readonly near: readonly string[]; readonly far: readonly string[] } };

/** Stations the pieces must still pass, where the wire was told to pass some and is cut on its way. */
function viaAt(held: Held, wire: string, where: Where | null): Via {
  const route = held.checked().design.routed.wires.get(wire);
  if (route === undefined || where === null) return {};
  const place =
    where.kind === "station"
      ? { kind: "station" as const, station: where.station }
      : { kind: "run" as const, run: where.run, offsetMm: where.mm };
  const via = viaAround(held.job, route, place);
  return via === null ? {} : { via };
}

/** The same where the wire is led over a terminal: cut at the station that stands at. */
function viaOf(held: Held, { wire, pin }: { readonly wire: string; readonly pin: string }): Via {
  const owner = pin.slice(0, pin.indexOf("."));
  const { parts, joints, connectors } = held.job;
  const station = [...parts, ...joints, ...connectors].find(({ id }) => id === owner)?.station;
  return station === undefined ? {} : viaAt(held, wire, { kind: "station", station });
}
