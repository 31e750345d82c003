import {
  batteriesOf,
  connectorCavityPins,
  HUB,
  type Job,
  pinRef,
  presentParts,
  presentWires,
} from "../../job/index.ts";

/** Pins that are one piece of metal: wires, joints, mated cavities, bodies and what fastens them. No switch, fuse or load is passed. */
export interface WireNets {
  /** Name of the net of a pin: the first of its pins by name. */
  readonly netOf: (pin: string) => string;
  readonly isEarth: (pin: string) => boolean;
  /** What a net is for, as far as swapping goes: all earth is one, and so are the phases of one generator. */
  readonly purposeOf: (pin: string) => string;
}

/** Bonds that insulate. */
const APART: ReadonlySet<string> = new Set(["rubber", "none", "paint"]);

/** @param apart  id of a connector taken as unplugged; absent: all are mated. */
export function wireNets(job: Job, apart?: string): WireNets {
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
  const earthPins = [
    ...job.bodies.map(({ id }) => pinRef(id, HUB)),
    ...batteriesOf(job).map(({ earthedPost }) => earthedPost),
  ];
  const earths = new Set(earthPins.map(rootOf));
  const phases = phasePins(job);
  const phaseOf = new Map([...phases].map(([pin, part]) => [rootOf(pin), part]));
  return {
    netOf: rootOf,
    isEarth: (pin) => earths.has(rootOf(pin)),
    purposeOf: (pin) => {
      const root = rootOf(pin);
      return earths.has(root) ? "earth" : (phaseOf.get(root) ?? root);
    },
  };
}

/** Pins of phase windings, with the generator they belong to. */
function phasePins(job: Job): ReadonlyMap<string, string> {
  return new Map(
    presentParts(job).flatMap((part) =>
      part.kind !== "generator"
        ? []
        : part.windings
            .filter(({ use }) => use === "phase")
            .flatMap(({ pins }) =>
              pins.map((pin) => [pinRef(part.id, pin), `phases of ${part.id}`] as const),
            ),
    ),
  );
}
