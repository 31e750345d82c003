import type { Job, Wire } from "../job.ts";
import { connectorCavityPins, pinRef } from "../pinsOf.ts";
import type { Operation } from "./operation.ts";
import { removeWithPlaces } from "./wireEdits.ts";

/**
 * A joint or connector taken out of the wires it was put into: the two wires that meet there become one again, which keeps the id, colour and size of the first.
 * A typed length does not hold for the whole and goes.
 *
 * @returns null where at some place not exactly two wires meet, or one wire has both ends there
 */
export function healWires(job: Job, list: "joints" | "connectors", id: string): Operation | null {
  const pairs = list === "joints" ? ofJoint(job, id) : ofConnector(job, id);
  if (pairs === null) return null;
  return {
    op: "batch",
    name: `Take ${id} out`,
    operations: [
      ...pairs.flatMap((pair) => made(job, pair)),
      removeWithPlaces(job.layout, list, id),
    ],
  };
}

/** Two wires with the pin each of them has at the place. */
type Meeting = readonly [End, End];
interface End {
  readonly wire: Wire;
  readonly end: "from" | "to";
}

function ofJoint(job: Job, id: string): readonly Meeting[] | null {
  const ways = job.joints.find((joint) => joint.id === id)?.ways ?? [];
  const ends = ways.flatMap((way) => endsAt(job, pinRef(id, way)));
  return meeting(ends);
}

function ofConnector(job: Job, id: string): readonly Meeting[] | null {
  const connector = job.connectors.find((one) => one.id === id);
  const all = (connector === undefined ? [] : connectorCavityPins(connector)).map(
    ({ plug, socket }) => {
      const ends = [...endsAt(job, plug), ...endsAt(job, socket)];
      return ends.length === 0 ? [] : meeting(ends);
    },
  );
  return all.some((one) => one === null) ? null : all.flatMap((one) => one ?? []);
}

const endsAt = (job: Job, pin: string): readonly End[] =>
  job.wires.flatMap((wire) =>
    (["from", "to"] as const).filter((end) => wire[end] === pin).map((end) => ({ wire, end })),
  );

function meeting([first, second, ...more]: readonly End[]): readonly Meeting[] | null {
  if (first === undefined || second === undefined || more.length > 0) return null;
  return first.wire.id === second.wire.id ? null : [[first, second]];
}

function made(job: Job, [keep, gone]: Meeting): readonly Operation[] {
  const far = gone.end === "from" ? "to" : "from";
  const fitting = gone.wire[`${far}End`];
  const set = (path: string, value?: unknown): Operation => ({
    op: "set",
    list: "wires",
    id: keep.wire.id,
    path: [path],
    ...(value === undefined ? {} : { value }),
  });
  return [
    set(keep.end, gone.wire[far]),
    set(`${keep.end}End`, fitting),
    set("lengthMm"),
    set("via"),
    removeWithPlaces(job.layout, "wires", gone.wire.id),
  ];
}
