import type { Job } from "../job/index.ts";
import type { Place, WireRoute } from "./routed.ts";
import { stepEnds } from "./stepEnds.ts";

/**
 * Stations the two pieces of a wire must pass when it is cut at a place on its way: those it had to pass before that place, and those after.
 * A station that is the place itself needs no telling any more.
 *
 * @returns null where the wire does not pass the place
 */
export function viaAround(
  job: Job,
  route: WireRoute,
  place: Place,
): { readonly near: readonly string[]; readonly far: readonly string[] } | null {
  const cut = stationsBefore(job, route, place);
  if (cut === null) return null;
  const via = job.wires.find(({ id }) => id === route.wire)?.via ?? [];
  const near: string[] = [];
  const far: string[] = [];
  let from = 0;
  for (const station of via) {
    const at = route.stations.indexOf(station, from);
    if (at < 0) continue;
    from = at;
    const isHere = place.kind === "station" && place.station === station;
    if (!isHere) (at < cut ? near : far).push(station);
  }
  return { near, far };
}

/** How many of the stations touched come before the place; null where the way does not lead over it. */
function stationsBefore(job: Job, { stations, steps }: WireRoute, place: Place): number | null {
  if (place.kind === "station") {
    const at = stations.indexOf(place.station);
    return at < 0 ? null : at;
  }
  const endsOf = stepEnds(job);
  let count = 0;
  for (const step of steps) {
    if (endsOf(step).start !== null) count++;
    if (step.run !== place.run) continue;
    const [a, b] = [step.enterMm ?? Infinity, step.leaveMm ?? Infinity];
    if (Math.min(a, b) <= place.offsetMm && place.offsetMm <= Math.max(a, b)) return count;
  }
  return null;
}
