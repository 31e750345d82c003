import type { CircuitColumn } from "./circuitSheetInput.ts";
import type { ColumnLevels } from "./columnLevels.ts";
import type { StepSizes } from "./stepSizes.ts";

/** Top and bottom of everything in a column once it is stretched to the rails. */
export interface Placed {
  readonly topMm: number;
  readonly bottomMm: number;
}

export interface PlacedColumn {
  readonly start: Placed;
  readonly steps: readonly Placed[];
  readonly end: Placed;
}

/**
 * Columns drawn out between the rails: joints keep their order, spread in proportion; wires take up the slack between them, and where a
 * stretch has no wire its last step is simply followed by line.
 */
export function stretchedLevels(
  columns: readonly CircuitColumn[],
  levels: readonly ColumnLevels[],
  railsMm: number,
  sizes: StepSizes,
): PlacedColumn[] {
  const naturalMm = Math.max(...levels.map((level) => level.bottomMm));
  const ratio = railsMm / naturalMm;
  const jointLevels = new Map<string, number>();
  columns.forEach((column, i) => {
    column.steps.forEach((step, k) => {
      if (step.kind !== "joint") return;
      const middleMm = levels[i]!.stepsMm[k]! + sizes.step(step).heightMm / 2;
      jointLevels.set(`${column.id} ${step.id}`, middleMm * ratio);
    });
  });
  return columns.map((column, i) =>
    placeColumn(column, levels[i]!, jointLevels, { ratio, railsMm }, sizes),
  );
}

function placeColumn(
  column: CircuitColumn,
  level: ColumnLevels,
  jointLevels: ReadonlyMap<string, number>,
  { ratio, railsMm }: { readonly ratio: number; readonly railsMm: number },
  sizes: StepSizes,
): PlacedColumn {
  const { start, end, steps } = column;
  const startMm = level.startMm * ratio;
  const headMm = startMm + sizes.start(start).heightMm;
  const jointMm = end.kind === "join" ? jointLevels.get(`${end.column} ${end.joint}`) : undefined;
  const endBottomMm = jointMm ?? railsMm;
  const footMm = end.kind === "join" ? endBottomMm : endBottomMm - sizes.end(end).heightMm;
  const anchored = steps.map((step) =>
    step.kind === "joint" ? jointLevels.get(`${column.id} ${step.id}`)! : null,
  );
  const placed: Placed[] = [];
  let fromMm = headMm;
  let first = 0;
  for (let k = 0; k <= steps.length; k++) {
    const middleMm = k === steps.length ? null : anchored[k];
    if (k < steps.length && middleMm === null) continue;
    const halfMm = k < steps.length ? sizes.step(steps[k]!).heightMm / 2 : 0;
    const toMm = middleMm == null ? footMm : middleMm - halfMm;
    placed.push(...spread(steps.slice(first, k), fromMm, toMm, sizes));
    if (middleMm != null) placed.push({ topMm: toMm, bottomMm: middleMm + halfMm });
    fromMm = middleMm == null ? toMm : middleMm + halfMm;
    first = k + 1;
  }
  return {
    start: { topMm: startMm, bottomMm: headMm },
    steps: placed,
    end: { topMm: placed.at(-1)?.bottomMm ?? headMm, bottomMm: endBottomMm },
  };
}

function spread(
  steps: CircuitColumn["steps"],
  fromMm: number,
  toMm: number,
  sizes: StepSizes,
): Placed[] {
  const heightsMm = steps.map((step) => sizes.step(step).heightMm);
  const slackMm = toMm - fromMm - heightsMm.reduce((sumMm, each) => sumMm + each, 0);
  const wireCount = steps.filter((step) => step.kind === "wire").length;
  let yMm = fromMm;
  return steps.map((step, i) => {
    const topMm = yMm;
    const extraMm = step.kind === "wire" ? slackMm / wireCount : 0;
    yMm += heightsMm[i]! + Math.max(0, extraMm);
    return { topMm, bottomMm: yMm };
  });
}
