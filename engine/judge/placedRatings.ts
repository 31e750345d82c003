import type { Job } from "../job/index.ts";
import type { Conductor, Conductors, Routed } from "../route/index.ts";
import { type RateKept, rateKept, type WirePlace, wirePlacesOf } from "../size/index.ts";
import type { PlacedRating } from "./judge.ts";
import type { WorstCase } from "./worstCase.ts";

/** What every conductor may carry where it lies: of all places on its way, the one that lets it carry least. */
export function placedRatings(
  job: Job,
  routed: Routed,
  conductors: Conductors,
  worst: Pick<WorstCase, "conductors">,
  rate: RateKept = rateKept(),
): ReadonlyMap<string, PlacedRating> {
  const currentA = (id: string): number => worst.conductors.get(id)?.currentA ?? 0;
  const placesOf = wirePlacesOf(job, routed, conductors, currentA);
  const rated = (one: Conductor): PlacedRating => {
    const places = one.kind === "wire" ? placesOf(one.id) : [alone(one)];
    const hottestC = Math.max(...places.map(({ ambientC }) => ambientC));
    const single = rate({ makeId: one.makeId, ambientC: hottestC, bundle: ONE });
    const listA = single.tableA ?? single.currentA;
    const ratings = places.map((place) => {
      const { ambientC, bundle, sleeved } = place;
      return { ...rate({ makeId: one.makeId, ambientC, bundle, sleeved }), place, places, listA };
    });
    return ratings.reduce((least, next) => (next.currentA < least.currentA ? next : least));
  };
  return new Map([...conductors.values()].map((one) => [one.id, rated(one)]));
}

const ONE = { wireCount: 1, loadedCount: 1 };

/** A fly lead lies outside the loom, by itself. */
const alone = ({ ambientC }: Conductor): WirePlace => ({
  at: "alone",
  ambientC,
  bundle: ONE,
  sleeved: false,
  stretch: null,
});
