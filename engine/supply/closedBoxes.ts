import { connectorCavityPins, type Job, type PartOf, pinRef, presentWires } from "../job/index.ts";

/** What an ignition box loses while it conducts, Ω: little beside any coil. */
const CONDUCTING_OHM = 0.01;

/**
 * The job with every ignition box conducting. A box described by what it draws of itself, not by its outputs, earths the coil for a share
 * of the time all the same: a coil that ends on an otherwise idle pin of it is given its way to the box's earth.
 */
export function closedBoxes(job: Job): Job {
  const reached = reachOf(job, coilPins(job));
  const parts = job.parts.map((part) => {
    if (part.kind !== "module" || part.status === "remove" || part.driver) return part;
    const [first] = part.elements;
    if (first === undefined) return part;
    const used = new Set(part.elements.flatMap(({ pins }) => pins));
    const idle = part.pins.filter(({ id }) => !used.has(id) && reached.has(pinRef(part.id, id)));
    const added = idle.map(({ id }) => ({
      pins: [id, first.pins[1]] as const,
      ohm: { value: CONDUCTING_OHM, basis: "estimated" as const },
    }));
    return { ...part, elements: [...part.elements, ...added] } as PartOf<"module">;
  });
  return { ...job, parts };
}

function coilPins(job: Job): readonly string[] {
  return job.parts.flatMap((part) =>
    part.kind === "coil"
      ? part.elements.flatMap(({ pins }) => pins.map((pin) => pinRef(part.id, pin)))
      : [],
  );
}

/** Pins that wires, joints and plugs lead to. */
function reachOf(job: Job, from: readonly string[]): ReadonlySet<string> {
  const neighbours = new Map<string, string[]>();
  const join = (a: string, b: string): void => {
    neighbours.set(a, [...(neighbours.get(a) ?? []), b]);
    neighbours.set(b, [...(neighbours.get(b) ?? []), a]);
  };
  for (const wire of presentWires(job)) join(wire.from, wire.to);
  for (const joint of job.joints) {
    for (const way of joint.ways) join(pinRef(joint.id, way), joint.id);
  }
  for (const connector of job.connectors) {
    for (const { plug, socket } of connectorCavityPins(connector)) join(plug, socket);
  }
  const seen = new Set(from);
  const queue = [...from];
  for (const ref of queue) {
    for (const next of neighbours.get(ref) ?? []) {
      if (seen.has(next)) continue;
      seen.add(next);
      queue.push(next);
    }
  }
  return seen;
}
