import type { Job, Wire } from "@copperwright/engine";
import { ownerOf } from "./thingKinds.ts";

/** Wires near a new one, nearest first: on the very pins of its ends, then on the things they belong to. */
export function wiresNear({ wires }: Job, from: string, to: string): readonly Wire[] {
  const nearness = (wire: Wire): number => {
    const ends = [wire.from, wire.to];
    const owners = ends.map(ownerOf);
    if (ends.includes(from)) return 0;
    if (ends.includes(to)) return 1;
    if (owners.includes(ownerOf(from))) return 2;
    return owners.includes(ownerOf(to)) ? 3 : 4;
  };
  return wires
    .map((wire, i) => ({ wire, i, rank: nearness(wire) }))
    .filter(({ rank }) => rank < 4)
    .sort((p, q) => p.rank - q.rank || p.i - q.i)
    .map(({ wire }) => wire);
}

/** The circuit a new wire most likely belongs to: that of the nearest wire that is neither earth nor main feed, else of the nearest; null: none is near. */
export function likelyCircuit(job: Job, from: string, to: string): string | null {
  const common = new Set(
    job.circuits
      .filter(({ dropClass }) => dropClass === "earth" || dropClass === "main-feed")
      .map(({ id }) => id),
  );
  const near = wiresNear(job, from, to).map(({ circuit }) => circuit);
  return near.find((id) => !common.has(id)) ?? near[0] ?? null;
}
