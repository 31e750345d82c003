import type { Conductors } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { FallStep } from "./fallOf.ts";
import { supplyRule } from "./supplyRule.ts";

/** One side of the starter's way: drop against its limit, copper against its heat. */
export interface CableSide {
  readonly side: "live" | "earth";
  readonly dropV: number;
  readonly limitV: number;
  readonly holds: boolean;
  readonly leastMm2: number;
  /** Time the thinnest copper stands this current from its hottest healthy state, s: (k S / I)². */
  readonly standsS: number;
  /** Of all its cables, where only more copper is missing; null: nothing is missing, or contacts alone are over the limit. */
  readonly neededMm2: number | null;
}

const TABLE_V = 12;

/**
 * Live and earth side of the starter's way. Where the drop is over its limit, copper in proportion brings the cables' part down to what the
 * contacts leave: S' = S · cables / (limit − contacts).
 *
 * @param fall  from `fallOf`, warm.
 */
export function starterCables(
  fall: readonly FallStep[],
  conductors: Conductors,
  nominalV: number,
): readonly CableSide[] {
  const k = figure("kFactors", "pvc-70-160", "value").value;
  return (["live", "earth"] as const).flatMap((side): CableSide[] => {
    const steps = fall.filter((step) => step.side === side);
    const cables = steps.filter((step) => conductors.has(step.of));
    if (cables.length === 0) return [];
    const rule = side === "live" ? "crank-live" : "crank-earth";
    const limitV = (supplyRule(rule) * nominalV) / TABLE_V;
    const dropV = sumOf(steps);
    const leastMm2 = Math.min(...cables.map(({ of }) => conductors.get(of)!.areaMm2));
    const currentA = Math.max(...cables.map((step) => step.currentA));
    const leftV = limitV - (dropV - sumOf(cables));
    const neededMm2 = dropV > limitV && leftV > 0 ? (leastMm2 * sumOf(cables)) / leftV : null;
    const standsS = ((k * leastMm2) / currentA) ** 2;
    return [{ side, dropV, limitV, holds: dropV <= limitV, leastMm2, standsS, neededMm2 }];
  });
}

const sumOf = (steps: readonly FallStep[]): number =>
  steps.reduce((sumV, { dropV }) => sumV + dropV, 0);
