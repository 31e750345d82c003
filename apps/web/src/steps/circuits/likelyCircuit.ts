import type { Job } from "@copperwright/engine";
import { ownerOf } from "./thingKinds.ts";

/** The circuit of the wires already on either end's own thing, other than of earths and main feeds; null where there is none. */
export function likelyCircuit(job: Job, from: string, to: string): string | null {
  const owners = new Set([ownerOf(from), ownerOf(to)]);
  const common = new Set(
    job.circuits
      .filter(({ dropClass }) => dropClass === "earth" || dropClass === "main-feed")
      .map(({ id }) => id),
  );
  const near = job.wires
    .filter((wire) => owners.has(ownerOf(wire.from)) || owners.has(ownerOf(wire.to)))
    .map(({ circuit }) => circuit);
  return near.find((id) => !common.has(id)) ?? near[0] ?? null;
}
