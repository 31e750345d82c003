import type { SolvedState } from "../solvedStates.ts";

const WORKING_A = 0.005;

/** Largest current each load takes in the named states of the job, A, by PART:A-B. A load no state has at work is absent. */
export function loadCurrents(states: readonly SolvedState[]): ReadonlyMap<string, number> {
  const mostA = new Map<string, number>();
  const take = (ref: string, currentA: number): void => {
    const size = Math.abs(currentA);
    if (size > Math.max(WORKING_A, mostA.get(ref) ?? 0)) mostA.set(ref, size);
  };
  for (const { solution } of states) {
    if (solution === null) continue;
    for (const { part, filament, currentA } of solution.lamps)
      take(`${part}:${filament}`, currentA);
    for (const { part, element, currentA } of solution.loads) take(`${part}:${element}`, currentA);
  }
  return mostA;
}
