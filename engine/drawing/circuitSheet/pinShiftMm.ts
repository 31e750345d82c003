import { point } from "../scene.ts";
import { symbolPins } from "../symbolMarks.ts";
import type { PartStep } from "./circuitSheetInput.ts";

/** How far a symbol's pins stand to the left of its line, those the path does not use as well: names of pins go left of them. */
export function pinShiftMm({ symbol, isTurned }: PartStep): number {
  const pins = symbolPins({ symbol, at: point(0, 0), turnDeg: isTurned ? 180 : 0 });
  return Math.max(0, ...Object.values(pins).map(({ xMm }) => -xMm));
}

/** Upper and lower pin of a symbol that has one of each on its axis. */
export function endPins(
  pins: Readonly<Record<string, { readonly yMm: number }>>,
): [string, string] {
  const sorted = Object.entries(pins).sort(([, a], [, b]) => a.yMm - b.yMm);
  return [sorted[0]![0], sorted.at(-1)![0]];
}
