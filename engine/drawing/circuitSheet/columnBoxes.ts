import { CAP_MM } from "../lineWidth.ts";
import { measureTextMm } from "../measureTextMm.ts";
import type { CircuitColumn } from "./circuitSheetInput.ts";
import { JOINT_NOTE_FROM_MM, jointNoteText } from "./columnMarks.ts";
import type { StepSize } from "./stepSize.ts";
import type { StepSizes } from "./stepSizes.ts";
import type { Placed, PlacedColumn } from "./stretchedLevels.ts";

/** Columns told in words at each joint, by `column joint`. */
export type JointNotes = ReadonlyMap<string, readonly number[]>;

/** What one thing of a column takes of the sheet: its height, and its reach to the left and right of the column's line. */
export interface ColumnBox extends Placed {
  readonly leftMm: number;
  readonly rightMm: number;
}

/** Everything a column takes of the sheet once it is placed between the rails. */
export function columnBoxes(
  column: CircuitColumn,
  placed: PlacedColumn,
  notes: JointNotes,
  sizes: StepSizes,
): readonly ColumnBox[] {
  const whole = (size: StepSize, { topMm, bottomMm }: Placed): ColumnBox => ({
    topMm,
    bottomMm,
    leftMm: size.leftMm,
    rightMm: size.rightMm,
  });
  const steps = column.steps.map((step, i): ColumnBox => {
    const told = step.kind === "joint" ? (notes.get(`${column.id} ${step.id}`) ?? []) : [];
    const toldMm =
      told.length === 0
        ? 0
        : JOINT_NOTE_FROM_MM + measureTextMm(jointNoteText(told), CAP_MM.text, 400);
    const size = sizes.step(step);
    return whole({ ...size, rightMm: Math.max(size.rightMm, toldMm) }, placed.steps[i]!);
  });
  return [
    whole(sizes.start(column.start), placed.start),
    ...steps,
    whole(sizes.end(column.end), placed.end),
  ];
}
