import type { CircuitColumn, CircuitStep, PartHalf, PartStep } from "./circuitSheetInput.ts";

/** Stands for a column's number until it is known; two figures, so that room is kept. */
const UNKNOWN_COLUMN = "88";

/**
 * Columns whose split parts say where their other half stands: in which column of these sheets, else in the words they brought.
 *
 * @param isNumbered  false while columns are still being fitted: room for the number is kept
 */
export function crossReferenced(
  columns: readonly CircuitColumn[],
  isNumbered: boolean,
): CircuitColumn[] {
  const halves = columns.flatMap((column, i) =>
    column.steps.flatMap((step) =>
      step.kind === "part" && step.half ? [{ step, half: step.half, number: String(i + 1) }] : [],
    ),
  );
  const told = (step: PartStep, half: PartHalf): string => {
    const others = halves.filter((one) => one.step.id === step.id && one.half.is !== half.is);
    const numbers = [
      ...new Set(others.map(({ number }) => (isNumbered ? number : UNKNOWN_COLUMN))),
    ];
    if (numbers.length === 0) return half.elsewhere;
    return `${half.other} in column${numbers.length > 1 ? "s" : ""}\u00A0${numbers.join(", ")}`;
  };
  const worded = (step: CircuitStep): CircuitStep => {
    if (step.kind !== "part" || !step.half) return step;
    return { ...step, crossNote: told(step, step.half) };
  };
  return columns.map((column) => ({ ...column, steps: column.steps.map(worded) }));
}
