import type { Job } from "../job.ts";
import { pinRef } from "../pinsOf.ts";
import type { Operation } from "./operation.ts";

export interface FreePin {
  readonly pin: string;
  /** What makes the pin, where it is not there yet. */
  readonly operations: readonly Operation[];
}

/** Written in place of a pin: a new one of its owner. No pin can be called that. */
export const NEW_PIN = "*";

/**
 * A pin to end a wire on. `OWNER.*` asks for a new one: a way of a joint, a cavity of a connector, a point of a body at a station. On a joint a way that no
 * wire ends on is taken before one is added. Parts get no new pins: theirs are what the part has.
 *
 * @param half which half of a connector's cavity
 */
export function freePin(
  job: Job,
  asked: string,
  at: { readonly station?: string | undefined; readonly half?: "p" | "s" } = {},
): FreePin {
  const owner = asked.slice(0, asked.indexOf("."));
  if (!asked.endsWith(`.${NEW_PIN}`)) return { pin: asked, operations: [] };
  const joint = job.joints.find(({ id }) => id === owner);
  if (joint !== undefined) {
    const used = new Set(job.wires.flatMap(({ from, to }) => [from, to]));
    const free = joint.ways.find((way) => !used.has(pinRef(owner, way)));
    if (free !== undefined) return { pin: pinRef(owner, free), operations: [] };
    const way = nextName(joint.ways);
    return made("joints", owner, "ways", [...joint.ways, way], pinRef(owner, way));
  }
  const connector = job.connectors.find(({ id }) => id === owner);
  if (connector !== undefined) {
    const cavity = nextName(connector.cavities);
    const pin = pinRef(owner, `${cavity}${at.half ?? "p"}`);
    return made("connectors", owner, "cavities", [...connector.cavities, cavity], pin);
  }
  const body = job.bodies.find(({ id }) => id === owner);
  if (body !== undefined) {
    const point = nextName(body.points.map(({ id }) => id));
    const item = { id: point, ...(at.station === undefined ? {} : { station: at.station }) };
    return made("bodies", owner, "points", [...body.points, item], pinRef(owner, point));
  }
  return { pin: asked, operations: [] };
}

function made(
  list: "joints" | "connectors" | "bodies",
  id: string,
  path: string,
  value: readonly unknown[],
  pin: string,
): FreePin {
  return { pin, operations: [{ op: "set", list, id, path: [path], value }] };
}

/** The lowest number that is no name yet. */
function nextName(names: readonly string[]): string {
  let n = 1;
  while (names.includes(`${n}`)) n++;
  return `${n}`;
}
