import { presentWires } from "./asFound.ts";
import { batteriesOf } from "./batteryOf.ts";
import type { Job } from "./job.ts";
import { connectorCavityPins, HUB, pinRef } from "./pinsOf.ts";

/** Pins that are one piece of metal: wires, joints, mated cavities, masses and the bonds that conduct. Named by the first of their pins. */
export interface MetalNets {
  readonly netOf: (pin: string) => string;
  readonly isEarth: (pin: string) => boolean;
}

/** Bonds that insulate. */
const APART: ReadonlySet<string> = new Set(["rubber", "none", "paint"]);

/**
 * @param more   further pairs of pins taken as one, such as the two ends of a fuse
 * @param apart  id of a connector taken as unplugged; absent: all are mated
 */
export function metalNets(
  job: Job,
  more: readonly (readonly [string, string])[] = [],
  apart?: string,
): MetalNets {
  const above = new Map<string, string>();
  const rootOf = (pin: string): string => {
    let root = pin;
    for (let up = above.get(root); up !== undefined; up = above.get(root)) root = up;
    return root;
  };
  const join = (a: string, b: string): void => {
    const [first, second] = [rootOf(a), rootOf(b)].sort() as [string, string];
    if (first !== second) above.set(second, first);
  };
  for (const { from, to } of presentWires(job)) join(from, to);
  for (const { id, ways } of job.joints) {
    for (const way of ways.slice(1)) join(pinRef(id, ways[0]!), pinRef(id, way));
  }
  for (const connector of job.connectors) {
    if (connector.id === apart) continue;
    for (const { plug, socket } of connectorCavityPins(connector)) join(plug, socket);
  }
  for (const { id, points } of job.bodies) {
    for (const point of points) join(pinRef(id, HUB), pinRef(id, point.id));
  }
  for (const { from, to, kind } of job.bonds) if (!APART.has(kind)) join(from, to);
  for (const [a, b] of more) join(a, b);
  const earths = new Set(
    [
      ...job.bodies.map(({ id }) => pinRef(id, HUB)),
      ...batteriesOf(job).map(({ earthedPost }) => earthedPost),
    ].map(rootOf),
  );
  return { netOf: rootOf, isEarth: (pin) => earths.has(rootOf(pin)) };
}
