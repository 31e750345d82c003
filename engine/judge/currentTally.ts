import type { JobElement, QuickState } from "../operate/index.ts";
import type { WorstCurrent } from "./worstCase.ts";

/** Largest |current| of every element so far, with the place of the state it was met in. */
export interface CurrentTally {
  readonly mostA: Float64Array;
  readonly at: Int32Array;
}

/** A current counts as larger only beyond the rounding of a solve. */
const MORE_RATIO = 1e-6;
const MORE_A = 1e-6;

export const newTally = (elementCount: number): CurrentTally => ({
  mostA: new Float64Array(elementCount),
  at: new Int32Array(elementCount),
});

export function tallyUp(tally: CurrentTally, elementA: Float64Array, stateIndex: number): void {
  const { mostA, at } = tally;
  for (let k = 0; k < mostA.length; k++) {
    const currentA = Math.abs(elementA[k]!);
    if (currentA <= mostA[k]! * (1 + MORE_RATIO) + MORE_A) continue;
    mostA[k] = currentA;
    at[k] = stateIndex;
  }
}

/** Places of the states that are worst for an element of these kinds. */
export function worstStates(
  tally: CurrentTally,
  elements: readonly JobElement[],
  kinds: ReadonlySet<string>,
): ReadonlySet<number> {
  const found = new Set<number>();
  for (const [k, { kind }] of elements.entries()) {
    if (kinds.has(kind) && tally.mostA[k]! > 0) found.add(tally.at[k]!);
  }
  return found;
}

/** A tally by the names of the elements of one kind. */
export function currentsOf(
  tally: CurrentTally,
  elements: readonly JobElement[],
  kind: string,
  stateAt: (index: number) => { readonly state: QuickState; readonly batteryV: number | null },
): ReadonlyMap<string, WorstCurrent> {
  return new Map(
    elements.flatMap((element, k): (readonly [string, WorstCurrent])[] => {
      if (element.kind !== kind) return [];
      const currentA = tally.mostA[k]!;
      const none = { currentA, state: null, batteryV: null };
      return [[element.of, currentA > 0 ? { currentA, ...stateAt(tally.at[k]!) } : none]];
    }),
  );
}
