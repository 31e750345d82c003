import type { Connector, Job, Joint, Wire } from "../job.ts";
import type { Operation } from "./operation.ts";

type Length = NonNullable<Wire["lengthMm"]>;

/** Lengths of the two pieces, where the whole had a typed one; without them both pieces are of unknown length. */
export interface PieceLengths {
  readonly nearMm: Length;
  readonly farMm: Length;
}

/** Stations the two pieces must pass, where the whole was told to pass some. */
export interface PieceWays {
  readonly near: readonly string[];
  readonly far: readonly string[];
}

/**
 * A wire cut in two at a connector: the near piece keeps the wire's id and ends on the plug half, the far piece begins on the socket half.
 * The connector is added unless the job has it. A wire that is not there gives an operation that is refused when applied.
 */
export function splitWireByConnector(
  job: Job,
  change: {
    readonly wire: string;
    readonly connector: Connector;
    readonly cavity: string;
    readonly newWire: string;
    readonly lengths?: PieceLengths;
  },
): Operation {
  const { connector, cavity } = change;
  const isNew = !job.connectors.some((item) => item.id === connector.id);
  const add: readonly Operation[] = isNew
    ? [{ op: "add", list: "connectors", item: connector }]
    : [];
  const name = `Put connector ${connector.id} into ${change.wire}`;
  const near = `${connector.id}.${cavity}p`;
  const far = `${connector.id}.${cavity}s`;
  return { op: "batch", name, operations: [...add, ...cutWire(job, change, near, far)] };
}

/** A wire cut in two at a joint, so that others can join it there: `ways` are the ways of the near and the far piece. */
export function insertJoint(
  job: Job,
  change: {
    readonly wire: string;
    readonly joint: Joint;
    readonly ways: readonly [string, string];
    readonly newWire: string;
    readonly lengths?: PieceLengths;
    readonly via?: PieceWays;
  },
): Operation {
  const { joint, ways } = change;
  const isNew = !job.joints.some((item) => item.id === joint.id);
  const add: readonly Operation[] = isNew ? [{ op: "add", list: "joints", item: joint }] : [];
  const [near, far] = ways.map((way) => `${joint.id}.${way}`) as [string, string];
  const name = `Put joint ${joint.id} into ${change.wire}`;
  return { op: "batch", name, operations: [...add, ...cutWire(job, change, near, far)] };
}

/** The near piece keeps id, number and its `from`, and ends on `near`; the far piece begins on `far`. What was fitted at the old ends stays there. */
export function cutWire(
  job: Job,
  change: {
    readonly wire: string;
    readonly newWire: string;
    readonly lengths?: PieceLengths;
    readonly via?: PieceWays;
  },
  near: string,
  far: string,
): readonly Operation[] {
  const { wire: id, newWire, lengths, via = { near: [], far: [] } } = change;
  const wire = job.wires.find((item) => item.id === id);
  const set = (path: string, value?: unknown): Operation => ({
    op: "set",
    list: "wires",
    id,
    path: [path],
    ...(value === undefined ? {} : { value }),
  });
  if (wire === undefined) return [set("to", near)];
  const { fromEnd: _from, lengthMm: _length, via: _via, number: _number, ...same } = wire;
  const farLength = lengths === undefined ? {} : { lengthMm: lengths.farMm };
  const farVia = via.far.length === 0 ? {} : { via: via.far };
  const item = { ...same, id: newWire, from: far, ...farLength, ...farVia };
  return [
    set("to", near),
    set("toEnd"),
    set("lengthMm", lengths?.nearMm),
    set("via", via.near.length === 0 ? undefined : via.near),
    { op: "add", list: "wires", item },
  ];
}
