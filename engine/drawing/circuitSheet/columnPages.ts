import { CAP_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import type { CircuitColumn } from "./circuitSheetInput.ts";
import { JOINT_NOTE_FROM_MM, jointNoteText } from "./columnMarks.ts";
import { endSize, startSize, stepSize } from "./stepSize.ts";

export const COLUMN_GAP_MM = 5;

/** Columns told in words at each joint, by `column joint`. */
export type JointNotes = ReadonlyMap<string, readonly number[]>;

/** Reach of a column to the left and right of its line. */
export function columnWidths(
  column: CircuitColumn,
  notes: JointNotes,
): readonly [leftMm: number, rightMm: number] {
  const sizes = [startSize(column.start), ...column.steps.map(stepSize), endSize(column.end)];
  const told = column.steps.flatMap((step) => notes.get(`${column.id} ${step.id}`) ?? []);
  const toldMm = measureTextMm(jointNoteText(told), CAP_MM.text, 400);
  return [
    Math.max(...sizes.map(({ leftMm }) => leftMm)),
    Math.max(
      24,
      told.length > 0 ? JOINT_NOTE_FROM_MM + toldMm : 0,
      ...sizes.map(({ rightMm }) => rightMm),
    ),
  ];
}

export function columnWidthMm(column: CircuitColumn, notes: JointNotes): number {
  const [leftMm, rightMm] = columnWidths(column, notes);
  return leftMm + rightMm;
}

/** Columns page by page; columns drawn across to each other stay on one page. */
export function columnPages(
  columns: readonly CircuitColumn[],
  notes: JointNotes,
  widthMm: number,
): { readonly from: number; readonly to: number }[] {
  const pages: { from: number; to: number }[] = [];
  let from = 0;
  while (from < columns.length) {
    let to = from;
    let usedMm = 0;
    let lastCut = from;
    while (to < columns.length) {
      usedMm += columnWidthMm(columns[to]!, notes) + (to > from ? COLUMN_GAP_MM : 0);
      if (usedMm > widthMm && to > from) break;
      to++;
      const isTied = to < columns.length && isTiedToNeighbour(columns[to]!);
      if (!isTied) lastCut = to;
    }
    const end = to === columns.length ? to : lastCut > from ? lastCut : to;
    pages.push({ from, to: end });
    from = end;
  }
  return pages;
}

/** Whether a column starts or ends at a joint of another, drawn across. */
export const meetsJoint = (
  next: CircuitColumn | undefined,
  column: string,
  joint: string,
): boolean =>
  [next?.start, next?.end].some(
    (way) => way !== undefined && "joint" in way && way.column === column && way.joint === joint,
  );

const isTiedToNeighbour = ({ start, end }: CircuitColumn): boolean =>
  start.kind === "branch" || end.kind === "join";
