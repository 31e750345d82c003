import type { CircuitColumn } from "./circuitSheetInput.ts";
import { type ColumnBox, columnBoxes, type JointNotes } from "./columnBoxes.ts";
import { columnLevels } from "./columnLevels.ts";
import type { StepSizes } from "./stepSizes.ts";
import { type PlacedColumn, stretchedLevels } from "./stretchedLevels.ts";

/** Between what two columns have at the same height. */
const BOX_GAP_MM = 3;
/** Least distance of the lines of two columns. */
const PITCH_MM = 14;
/** How far apart the rails may stand. */
export interface RailsAsked {
  readonly mostMm: number;
  /** Columns are drawn out by no more than this. */
  readonly stretchMostRatio: number;
  readonly sizes: StepSizes;
  /** Ways drawn across are told in words where a sheet would end between them; else such columns stay together. */
  readonly cutsTies: boolean;
  /** No more columns on a page, where they may be parted there. */
  readonly columnsMostCount: number;
}

/** Columns of one page between its rails. */
export interface PageLayout {
  readonly placed: readonly PlacedColumn[];
  /** Lines of the columns from the left edge. */
  readonly xsMm: readonly number[];
  readonly railsMm: number;
  readonly widthMm: number;
}

/**
 * Columns beside each other as closely as what stands at the same height allows: a name beside one path may reach over the head of the next, which begins
 * lower. Null where columns wait for each other in a ring.
 */
export function pageLayout(
  columns: readonly CircuitColumn[],
  notes: JointNotes,
  { mostMm, stretchMostRatio, sizes }: RailsAsked,
): PageLayout | null {
  const levels = columnLevels(columns, sizes);
  if (levels === null) return null;
  const naturalMm = Math.max(...levels.map(({ bottomMm }) => bottomMm));
  const railsMm = Math.max(naturalMm, Math.min(mostMm, naturalMm * stretchMostRatio));
  const placed = stretchedLevels(columns, levels, railsMm, sizes);
  const before: { readonly box: ColumnBox; readonly toMm: number }[] = [];
  const xsMm: number[] = [];
  columns.forEach((column, i) => {
    const boxes = columnBoxes(column, placed[i]!, notes, sizes);
    let xMm = (xsMm.at(-1) ?? -PITCH_MM) + PITCH_MM;
    for (const box of boxes) {
      xMm = Math.max(xMm, box.leftMm);
      for (const other of before) {
        if (meets(box, other.box)) xMm = Math.max(xMm, other.toMm + BOX_GAP_MM + box.leftMm);
      }
    }
    xsMm.push(xMm);
    for (const box of boxes) before.push({ box, toMm: xMm + box.rightMm });
  });
  return { placed, xsMm, railsMm, widthMm: Math.max(...before.map(({ toMm }) => toMm)) };
}

const meets = (a: ColumnBox, b: ColumnBox): boolean =>
  a.topMm < b.bottomMm + 1e-6 && b.topMm < a.bottomMm + 1e-6;
