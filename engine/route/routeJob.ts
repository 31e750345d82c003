import { type Job, pinRef } from "../job/index.ts";
import { figure } from "../tables/index.ts";
import { type Ambients, ambientsOf } from "./ambientOf.ts";
import { loomGraph } from "./loomGraph.ts";
import { placesOfPins } from "./placesOfPins.ts";
import type { Place, Routed, Stretch, WireRoute } from "./routed.ts";
import { routeWire } from "./routeWire.ts";
import { wayFinder } from "./shortestWay.ts";
import { stretchesOf } from "./stretchesOf.ts";

/**
 * The physical loom before any size is chosen: the way and length of every wire, the bundles, the air round them.
 *
 * A length is typed, or the sum of the measured runs of the shortest way through the stations of `via`, or the stated
 * stub where both ends are at one station. What nobody has measured stays unknown, with what is missing.
 *
 * @param known  routes of wires as this very loom gives them.
 */
export function routeJob(job: Job, known: ReadonlyMap<string, WireRoute> = new Map()): Routed {
  const graph = loomGraph(job);
  const places = placesOfPins(job);
  const map = {
    graph,
    finder: wayFinder(graph),
    places,
    stub: figure("routeRules", "stub", "value"),
    tie: figure("routeRules", "tie", "value"),
  };
  const routes = job.wires.map((wire) => known.get(wire.id) ?? routeWire(wire, map));
  const air = ambientsOf(job);
  const stretches = stretchesOf(graph, routes, air);
  const present = routes.filter((route) => route.status !== "remove");
  return {
    wires: new Map(routes.map((route) => [route.wire, route])),
    stretches,
    stretchesOfWire: inOrderOfPassing(present, stretches),
    ambients: new Map([
      ...present.map((route) => [route.wire, hottest(route, air)] as const),
      ...flyLeadAmbients(job, places, air),
    ]),
    lengthsComplete: present.every((route) => route.lengthMm !== null),
  };
}

function inOrderOfPassing(
  routes: readonly WireRoute[],
  stretches: readonly Stretch[],
): ReadonlyMap<string, readonly Stretch[]> {
  const byWire = new Map<string, Stretch[]>();
  for (const stretch of stretches) {
    for (const wire of new Set(stretch.wires)) {
      const known = byWire.get(wire) ?? [];
      known.push(stretch);
      byWire.set(wire, known);
    }
  }
  return new Map(
    routes.map(({ wire, steps }) => {
      const own = byWire.get(wire) ?? [];
      const passed = steps.flatMap((step) => {
        const nearMm = Math.min(step.enterMm ?? Infinity, step.leaveMm ?? Infinity);
        return own.filter(
          ({ run, enterMm, leaveMm }) =>
            run === step.run && enterMm <= nearMm && nearMm < (leaveMm ?? Infinity),
        );
      });
      return [wire, [...new Set(passed)]];
    }),
  );
}

function hottest(route: WireRoute, air: Ambients) {
  const seen = [
    ...route.steps.map(({ run }) => ({ ambientC: air.ofRun(run), at: run })),
    ...route.stations.map((at) => ({ ambientC: air.ofStation(at) ?? -Infinity, at })),
  ].filter(({ ambientC }) => ambientC > -Infinity);
  const [first, ...rest] = seen;
  if (first === undefined) return { ambientC: air.defaultC, at: "job" };
  return rest.reduce((most, one) => (one.ambientC > most.ambientC ? one : most), first);
}

function flyLeadAmbients(job: Job, places: ReadonlyMap<string, Place>, air: Ambients) {
  return job.parts.flatMap((part) =>
    part.pins
      .filter((pin) => pin.flyLead !== undefined && part.status !== "remove")
      .map((pin) => {
        const ref = pinRef(part.id, pin.id);
        const place = places.get(ref);
        const at = place?.kind === "station" ? place.station : "job";
        return [ref, { ambientC: air.ofStation(at) ?? air.defaultC, at }] as const;
      }),
  );
}
