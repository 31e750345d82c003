import {
  batteriesOf,
  idMaker,
  insertRelay,
  mainEarthBody,
  type PartOf,
  type Wire,
} from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import type { LiveEnd } from "./liveEnd.ts";
import { bladeFuse, bladeRatings, newWire, setOfWire } from "./newParts.ts";
import type { ProvedFuse } from "./proveResult.ts";
import type { TriedChange } from "./structuralChanges.ts";

/** The relay of the tables is one for this, V. */
const RELAY_V = 12;

/**
 * A relay at the load the wire feeds straight: the old way then works the coil alone, and its fuse is made as small as what is left
 * allows; the load is fed from the battery through a fuse of its own. Nothing where the wire feeds no load straight.
 */
export function relayChange(
  { job, conductors }: CompiledJob,
  wire: Wire,
  { end }: LiveEnd,
  of: {
    readonly loadA: number;
    readonly guard: Pick<ProvedFuse, "fuse" | "lastingA"> | undefined;
  },
): readonly TriedChange[] {
  const loadEnd = end === "from" ? "to" : "from";
  const load = job.parts.find(
    ({ id, kind }) => (kind === "lamp" || kind === "horn") && wire[loadEnd].startsWith(`${id}.`),
  );
  const body = mainEarthBody(job);
  const earthPin = body?.points[0] && `${body.id}.${body.points[0].id}`;
  const [post] = batteriesOf(job).map(({ livePost }) => livePost);
  const coilOhm = figure("relayDefaults", "coil-resistance", "value").value;
  const leftA = Math.max(0, (of.guard?.lastingA ?? 0) - of.loadA) + RELAY_V / coilOhm;
  const [smallA, newFuseA] = [bladeRatings(leftA)[0], bladeRatings(of.loadA)[0]];
  if (load === undefined || earthPin === undefined || post === undefined || !of.guard) return [];
  if (smallA === undefined || newFuseA === undefined || job.supply.nominalV !== RELAY_V) return [];
  const newId = idMaker(job);
  const [relay, newFuse] = [newId("R"), newId("F")];
  const [feed, contacts, earth] = [newId("W"), newId("W"), newId("W")];
  const { makeId, lengthMm } = conductors.get(wire.id)!;
  const size = { make: makeId, basis: "chosen" };
  const estimate = { value: lengthMm ?? 0, basis: "estimated" };
  const operations = [
    bladeFuse(newFuse, newFuseA, load.station),
    newWire(newId("W"), [post, `${newFuse}.IN`], wire, makeId),
    insertRelay(job, {
      wire: wire.id,
      loadEnd,
      relay: cubeRelay(relay, load.station, coilOhm),
      feed: { pin: `${newFuse}.OUT`, newWire: feed },
      load: { newWire: contacts },
      earth: { pin: earthPin, newWire: earth },
    }),
    ...[feed, contacts, earth].flatMap((id) => [
      setOfWire(id, "size", size),
      setOfWire(id, "lengthMm", estimate),
    ]),
    setOfWire(wire.id, "lengthMm", estimate),
    {
      op: "set" as const,
      list: "parts" as const,
      id: of.guard.fuse,
      path: ["ratingA"],
      value: smallA,
    },
  ];
  return [{ kind: "relay", operations, numbers: { newFuseA, smallA, relay, cut: of.guard.fuse } }];
}

const cubeRelay = (id: string, station: string | undefined, ohm: number): PartOf<"relay"> => ({
  id,
  name: "relay",
  ...(station === undefined ? {} : { station }),
  status: "new",
  pins: ["30", "87", "85", "86"].map((pin) => ({ id: pin })),
  kind: "relay",
  coil: { pins: ["86", "85"], ohm: { value: ohm, basis: "estimated" } },
  made: [["30", "87"]],
  rest: [],
});
