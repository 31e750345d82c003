import { point } from "../scene.ts";
import { symbolPins } from "../symbolMarks.ts";
import type { PartStep } from "./circuitSheetInput.ts";

/** How far a symbol's used pins stand to the left of its line: their names go left of them. */
export function pinShiftMm({ symbol, isTurned, symbolPins: chosen }: PartStep): number {
  const pins = symbolPins({ symbol, at: point(0, 0), turnDeg: isTurned ? 180 : 0 });
  const used = chosen ?? endPins(pins);
  return Math.max(0, ...used.map((pin) => -(pins[pin]?.xMm ?? 0)));
}

/** Upper and lower pin of a symbol that has one of each on its axis. */
export function endPins(
  pins: Readonly<Record<string, { readonly yMm: number }>>,
): [string, string] {
  const sorted = Object.entries(pins).sort(([, a], [, b]) => a.yMm - b.yMm);
  return [sorted[0]![0], sorted.at(-1)![0]];
}
