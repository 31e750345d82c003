import { type Figure, figureOrNull } from "../tables/index.ts";
import type { Design } from "./judge.ts";

/** What one such wire carries by the trade's list, as a cited figure; by the heat model alone where the make has no list. */
export function listFigure({ ratings, conductors }: Design, id: string): Figure {
  const rating = ratings.get(id)!;
  const { makeId } = conductors.get(id)!;
  const listed = rating.tableA === null ? null : figureOrNull("wires", makeId, "ratedA");
  return listed ?? modelFigure(rating.listA, makeId);
}

/** What the wire carries in its place, with the figure that governs it. */
export function placeFigure(design: Design, id: string): Figure {
  const rating = design.ratings.get(id)!;
  if (rating.governedBy === "model") {
    return modelFigure(rating.currentA, design.conductors.get(id)!.makeId);
  }
  return { ...listFigure(design, id), value: rating.currentA };
}

const modelFigure = (value: number, makeId: string): Figure => ({
  value,
  unit: "A",
  table: "heat model",
  row: makeId,
  source: "heat balance of the wire in its bundle",
  place: "engine/heat",
  confidence: "computed",
});

/** A wire in a few words: `A19, 1.01 mm²`. */
export const wireInWords = ({ conductors }: Design, id: string): string =>
  `${id} (${conductors.get(id)!.areaMm2.toFixed(2)} mm²)`;
