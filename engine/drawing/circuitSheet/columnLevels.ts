import type { CircuitColumn } from "./circuitSheetInput.ts";
import { JOINT_MM } from "./stepSize.ts";
import type { StepSizes } from "./stepSizes.ts";

/** Tops of everything in a column, mm below the feed rail. */
export interface ColumnLevels {
  readonly startMm: number;
  readonly stepsMm: readonly number[];
  /** Where the end begins. */
  readonly endMm: number;
  /** Lowest it reaches: the earth rail must not be higher. */
  readonly bottomMm: number;
}

const JOINT_HALF_MM = JOINT_MM / 2;

/**
 * Earliest level of every step: under the step before it; a branch under its joint, a joint not above the columns that come back to it
 * (longest path). Null where columns wait for each other in a ring.
 */
export function columnLevels(
  columns: readonly CircuitColumn[],
  sizes: StepSizes,
): ColumnLevels[] | null {
  const heights = columns.map((column) => column.steps.map((step) => sizes.step(step).heightMm));
  const joints = new Map<string, number>();
  const jointKey = (column: string, joint: string): string => `${column} ${joint}`;
  const roundMax = columns.reduce((sum, column) => sum + column.steps.length + 2, 1);
  for (let round = 0; round < roundMax; round++) {
    let hasMoved = false;
    const raise = (key: string, mm: number): void => {
      if (mm <= (joints.get(key) ?? -1) + 1e-9) return;
      joints.set(key, mm);
      hasMoved = true;
    };
    const levels = columns.map((column, i): ColumnLevels => {
      const { start, end } = column;
      const startMm =
        start.kind === "branch" ? (joints.get(jointKey(start.column, start.joint)) ?? 0) : 0;
      let yMm = startMm + sizes.start(start).heightMm;
      const stepsMm = column.steps.map((step, k) => {
        const isJoint = step.kind === "joint";
        const key = jointKey(column.id, step.id);
        if (isJoint) yMm = Math.max(yMm, (joints.get(key) ?? 0) - JOINT_HALF_MM);
        if (isJoint) raise(key, yMm + JOINT_HALF_MM);
        const topMm = yMm;
        yMm += heights[i]![k]!;
        return topMm;
      });
      if (end.kind === "join") raise(jointKey(end.column, end.joint), yMm + 2);
      return { startMm, stepsMm, endMm: yMm, bottomMm: yMm + sizes.end(end).heightMm };
    });
    if (!hasMoved) return levels;
  }
  return null;
}
