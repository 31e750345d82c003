import type { CircuitStep, ColumnEnd, ColumnStart } from "./circuitSheetInput.ts";
import { endSize, type StepSize, startSize, stepSize } from "./stepSize.ts";

/** Sizes of everything in columns, each worked out once however often columns are tried. */
export interface StepSizes {
  readonly step: (step: CircuitStep) => StepSize;
  readonly start: (start: ColumnStart) => StepSize;
  readonly end: (end: ColumnEnd) => StepSize;
}

export function stepSizes(): StepSizes {
  const steps = new Map<CircuitStep, StepSize>();
  const starts = new Map<string, StepSize>();
  const ends = new Map<string, StepSize>();
  return {
    step: (step) => known(steps, step, () => stepSize(step)),
    start: (start) => known(starts, keyOf(start), () => startSize(start)),
    end: (end) => known(ends, keyOf(end), () => endSize(end)),
  };
}

const keyOf = (way: ColumnStart | ColumnEnd): string =>
  "label" in way ? `${way.kind} ${way.label}` : way.kind;

function known<Key>(sizes: Map<Key, StepSize>, key: Key, make: () => StepSize): StepSize {
  const before = sizes.get(key);
  if (before !== undefined) return before;
  const made = make();
  sizes.set(key, made);
  return made;
}
