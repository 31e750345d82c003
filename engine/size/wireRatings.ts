import type { WorkingStep } from "../messages/index.ts";
import type { Confidence, Figure, WiresRow } from "../tables/index.ts";
import { figure } from "../tables/index.ts";
import { type Rating, ratingOf } from "./ratingOf.ts";

export interface WireRatingRow {
  readonly make: string;
  /** "list": as printed. "model": heat model. "in this place": the lower of the two, with factors. */
  readonly kind: "list" | "model" | "in this place";
  readonly basis: string;
  readonly ambientC: number | null;
  readonly loadedCount: number;
  readonly currentA: number;
  readonly source: string;
  readonly confidence: Confidence;
}

/** Makes rated before the list is cut: more are possible only where the name says nearly nothing. */
const MOST_MAKES = 12;

/** Every rating of every make the wire can be, list and model and what holds in this place. */
export function wireRatings(
  candidates: readonly WiresRow[],
  ambientC: number,
  wireCount: number,
): { readonly rows: readonly WireRatingRow[]; readonly working: readonly WorkingStep[] } {
  const bundle = { wireCount, loadedCount: wireCount };
  const rated = candidates.slice(0, MOST_MAKES).map((make) => ({
    make,
    rating: ratingOf({ makeId: make.id, ambientC, bundle }),
  }));
  const rows = rated.flatMap(({ make, rating }) => rowsOf(make, rating, ambientC, wireCount));
  const least = rated.reduce<Rating | null>(
    (low, { rating }) => (low === null || rating.currentA < low.currentA ? rating : low),
    null,
  );
  return { rows, working: least?.working ?? [] };
}

function rowsOf(
  make: WiresRow,
  rating: Rating,
  ambientC: number,
  wireCount: number,
): readonly WireRatingRow[] {
  const common = { make: make.id, ambientC, loadedCount: wireCount };
  const list: WireRatingRow[] = [];
  if (make.ratedA !== null) {
    const rated: Figure = figure("wires", make.id, "ratedA");
    list.push({
      make: make.id,
      kind: "list",
      basis: make.ratedBasis ?? "as printed",
      ambientC: make.ratedAmbientC,
      loadedCount: 1,
      currentA: rated.value,
      source: `${rated.source}, ${rated.place}`,
      confidence: rated.confidence,
    });
  }
  const model: WireRatingRow = {
    ...common,
    kind: "model",
    basis: `heat balance, conductor at ${make.tempClassC} °C`,
    currentA: rating.modelA,
    source: "steady heat balance in still air",
    confidence: "computed",
  };
  const governing = list[0];
  return [
    ...list,
    model,
    {
      ...common,
      kind: "in this place",
      basis: rating.governedBy === "table" ? (rating.tableBasis ?? "list") : model.basis,
      currentA: rating.currentA,
      source: rating.governedBy === "table" ? (governing?.source ?? "") : model.source,
      confidence: rating.governedBy === "table" ? (governing?.confidence ?? "own") : "computed",
    },
  ];
}
