import { type Job, pinRef, pinsOf } from "../job/index.ts";
import type { Place } from "./routed.ts";

/**
 * Where every pin of the job is. Pins whose place nobody has stated are absent.
 * A joint with an `offset` lies along a run; everything else is at the station of its part, connector or body point.
 */
export function placesOfPins(job: Job): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const { ref, station } of pinsOf(job).values()) {
    if (station !== null) places.set(ref, { kind: "station", station });
  }
  for (const { id, ways, offset } of job.joints) {
    if (offset === undefined) continue;
    const place: Place = { kind: "run", run: offset.run, offsetMm: offset.mm.value };
    for (const way of ways) places.set(pinRef(id, way), place);
  }
  return places;
}
