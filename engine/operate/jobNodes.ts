import { batteryOf, HUB, type Job, mainEarthBody, pinRef, pinsOf } from "../job/index.ts";

/** The nodes of a job's network: node k has names[k]; node 0 is the reference. */
export interface JobNodes {
  readonly names: readonly string[];
  readonly indexOf: ReadonlyMap<string, number>;
}

/** Inside end of a fly lead, or of a pin that has been taken apart from its part. */
export const insideName = (pin: string): string => `${pin}~`;
/** Where the ways of a joint meet. */
export const starName = (joint: string): string => `${joint}.~`;
/** How a node is written in every answer: "0", "n1" ... */
export const nodeLabel = (index: number): string => (index === 0 ? "0" : `n${index}`);

/** Pin all volts are against: the battery's earthed post; without a battery the main body; without a body the first pin. */
export function referencePin(job: Job): string {
  const battery = batteryOf(job);
  if (battery !== null) return battery.earthedPost;
  const body = mainEarthBody(job);
  if (body !== null) return pinRef(body.id, HUB);
  return [...pinsOf(job).keys()].sort()[0] ?? "0";
}

/**
 * Every pin is a node of its own, and so are the inside end of each fly lead and the star of each joint. They are numbered by
 * sorted name, so nothing that happens to the machine (a short, a broken wire, a switch) renumbers them. Pins taken apart from
 * their part get their inside node after all others.
 */
export function jobNodes(job: Job, takenApart: readonly string[]): JobNodes {
  const reference = referencePin(job);
  const inside = job.parts.flatMap((part) =>
    part.pins
      .filter((pin) => pin.flyLead !== undefined)
      .map((pin) => insideName(pinRef(part.id, pin.id))),
  );
  const stars = job.joints.map((joint) => starName(joint.id));
  const all = [...pinsOf(job).keys(), ...inside, ...stars].filter((name) => name !== reference);
  const names = [reference, ...all.sort(), ...[...takenApart].sort().map(insideName)];
  return { names, indexOf: new Map(names.map((name, index) => [name, index])) };
}
