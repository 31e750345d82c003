import type { Job, Wire } from "../job/index.ts";
import { routeJob } from "./routeJob.ts";

/**
 * The stations a wire must pass, with one more: put where the way over all of them is shortest. Of equal ways the first.
 *
 * @returns null where no way leads over it, or a run on every way is not measured and another leads nowhere
 */
export function viaOver(job: Job, wireId: string, station: string): readonly string[] | null {
  const wire = job.wires.find(({ id }) => id === wireId);
  if (wire === undefined) return null;
  const { lengthMm: _, ...untyped } = wire;
  const via = wire.via ?? [];
  let best: { readonly via: readonly string[]; readonly lengthMm: number } | null = null;
  for (let i = 0; i <= via.length; i++) {
    const tried: Wire = { ...untyped, via: [...via.slice(0, i), station, ...via.slice(i)] };
    const route = routeJob({ ...job, wires: [tried] }).wires.get(wireId);
    if (route === undefined || !route.stations.includes(station)) continue;
    // A way over a run nobody measured is a way, but the last to be taken.
    const lengthMm = route.lengthMm ?? Number.POSITIVE_INFINITY;
    if (best === null || lengthMm < best.lengthMm) best = { via: tried.via ?? [], lengthMm };
  }
  return best?.via ?? null;
}
