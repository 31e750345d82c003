import type { Job } from "@copperwright/engine";
import type { Chosen } from "../../store/documentState.ts";

/** What an id of a job is the id of, for links out of a sum; pins by PART.PIN. */
export function thingKinds(job: Job): (id: string) => Chosen["kind"] | null {
  const kinds = new Map<string, Chosen["kind"]>();
  const all: readonly (readonly [readonly { readonly id: string }[], Chosen["kind"]])[] = [
    [job.circuits, "circuit"],
    [job.runs, "run"],
    [job.bonds, "bond"],
    [job.stations, "station"],
    [job.connectors, "connector"],
    [job.joints, "joint"],
    [job.parts, "part"],
    [job.wires, "wire"],
  ];
  for (const [items, kind] of all) for (const { id } of items) kinds.set(id, kind);
  for (const { id, pins } of job.parts) for (const pin of pins) kinds.set(`${id}.${pin.id}`, "pin");
  return (id) => kinds.get(id) ?? null;
}
