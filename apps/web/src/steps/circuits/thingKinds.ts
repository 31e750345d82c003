import type { Job } from "@copperwright/engine";
import type { Chosen } from "../../store/documentState.ts";

/** What kind of thing an id on a diagram is; null: nothing that can be chosen. */
export function thingKinds(job: Job): (id: string) => Chosen["kind"] | null {
  const kinds = new Map<string, Chosen["kind"]>();
  for (const { id } of job.bodies) kinds.set(id, "body");
  for (const { id } of job.connectors) kinds.set(id, "connector");
  for (const { id } of job.joints) kinds.set(id, "joint");
  for (const { id } of job.parts) kinds.set(id, "part");
  for (const { id } of job.wires) kinds.set(id, "wire");
  return (id) => {
    const kind = kinds.get(id);
    if (kind !== undefined) return kind;
    return id.includes(".") && kinds.has(ownerOf(id)) ? "pin" : null;
  };
}

/** Part, joint, connector or body of a pin. */
export const ownerOf = (pin: string): string => pin.slice(0, pin.indexOf("."));

/** The thing a pin belongs to, as it is chosen. */
export function chosenOwner(job: Job, pin: string): Chosen | null {
  const id = ownerOf(pin);
  const kind = thingKinds(job)(id);
  return kind === null ? null : { kind, id };
}

/** A pin as a person reads it; `OWNER.*` is a place that is yet to be made. */
export const pinWords = (pin: string): string =>
  pin.endsWith(".*") ? `a free place on ${ownerOf(pin)}` : pin;
