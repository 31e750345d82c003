import type { Job } from "@copperwright/engine";
import type { Chosen } from "../../store/documentState.ts";
import type { DiagramView } from "./circuitsAnswers.ts";
import { ownerOf } from "./thingKinds.ts";

type Place = DiagramView["places"][number];

/** A terminal on the diagram a hand can take: of a wire chosen its ends, of anything else its terminals. */
export interface PinHandle extends Place {
  /** Pin a new wire begins on. */
  readonly pin: string;
  readonly wire: string | null;
  readonly end: "from" | "to" | null;
}

export function handlesOf(
  job: Job,
  chosen: Chosen,
  places: readonly Place[],
): readonly PinHandle[] {
  if (chosen.kind === "wire") {
    const wire = job.wires.find(({ id }) => id === chosen.id);
    if (wire === undefined) return [];
    return (["from", "to"] as const).flatMap((end) => {
      const pin = wire[end];
      const place = places.find(({ id }) => id === pin || id === ownerOf(pin));
      return place === undefined ? [] : [{ ...place, pin, wire: wire.id, end }];
    });
  }
  const owner = chosen.kind === "pin" ? ownerOf(chosen.id) : chosen.id;
  return places
    .filter(({ id }) => id === owner || ownerOf(id) === owner)
    .map((place) => ({
      ...place,
      pin: place.id.includes(".") ? place.id : `${place.id}.*`,
      wire: null,
      end: null,
    }));
}

/** Further than this a drop is outside, mm of the drawing. */
const REACH_MM = 6;

/** The terminal nearest to a point, other than the one the hand came from. */
export function nearestPlace(
  places: readonly Place[],
  { xMm, yMm }: { readonly xMm: number; readonly yMm: number },
  from: string,
): Place | null {
  let best: Place | null = null;
  let bestMm = REACH_MM;
  for (const place of places) {
    const mm = Math.hypot(place.at.xMm - xMm, place.at.yMm - yMm);
    if (place.id === from || mm >= bestMm) continue;
    best = place;
    bestMm = mm;
  }
  return best;
}
