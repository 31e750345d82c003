import { survivalOfWires } from "./allWires.ts";
import type { ProofOptions } from "./proofInput.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { MergedFirst } from "./provePart.ts";
import type { Tolerance } from "./proveResult.ts";
import { LENGTH_BAND_RATIO, type SolvedCorner } from "./toleranceCorners.ts";
import type { JudgedWire } from "./wireFindings.ts";

/** What readings may be off by, all towards heat: air, and largest lasting currents (battery, lamps and lengths together). Our own bands. */
const WARMER_K = 10;
const MORE_CURRENT_RATIO = 1.1;
/** Wires with the least margin are put to the test; the others are further away. */
const WIRE_COUNT = 24;

/**
 * How much of the verdict hangs on readings, by intervals. A conductor's temperature rises with the air, with its own current and with
 * its neighbours', so the hot corner of the bands bounds every point within them; the survival theorem is put to that corner.
 * Lights and relays have no such law: the corners themselves are solved in every state of every group.
 */
export function toleranceOf(
  plan: ProofPlan,
  { tallies }: Pick<MergedFirst, "tallies">,
  found: { readonly judged: readonly JudgedWire[]; readonly corners: readonly SolvedCorner[] },
  options: ProofOptions,
): Tolerance {
  const { judged, corners } = found;
  const loads = corners.flatMap(({ name, changed }) => changed.map((ref) => `${ref}: ${name}`));
  const hottestA = tallies.lastingA.map((currentA, k) =>
    Math.max(currentA * MORE_CURRENT_RATIO, ...corners.map(({ largestA }) => largestA[k]!)),
  );
  const hot = hotCorner(plan, hottestA, judged);
  return {
    method:
      "interval: the hot corner of the bands bounds heat; corners of battery, lamps, contacts and estimated lengths solved",
    seed: options.seed ?? 1,
    samples: 1 + corners.length,
    worstMargin: hot.worstMargin,
    lengthBandPercent: 100 * LENGTH_BAND_RATIO,
    moreCurrentRatio: moreCurrent(hottestA, tallies.lastingA),
    verdictChanges: [...hot.changed, ...loads.sort()],
  };
}

function hotCorner(
  plan: ProofPlan,
  lastingA: Float64Array,
  judged: readonly JudgedWire[],
): { readonly worstMargin: number | null; readonly changed: readonly string[] } {
  const marginOf = ({ survival }: JudgedWire): number =>
    survival.answers[0]?.worst?.marginK ?? Infinity;
  const tight = [...judged]
    .filter((one) => marginOf(one) < Infinity)
    .sort((a, b) => marginOf(a) - marginOf(b))
    .slice(0, WIRE_COUNT);
  const before = new Map(tight.map(({ survival }) => [survival.wire, survival]));
  let worstMargin: number | null = null;
  const changed: string[] = [];
  for (const after of survivalOfWires(warmer(plan), lastingA, [...before.keys()])) {
    const known = before.get(after.wire)!;
    // A bridge found harmless stays so: it is no question of warmth.
    const kept = after.answers.filter((one) =>
      known.answers.some(
        ({ exposure }) =>
          exposure.source === one.exposure.source &&
          exposure.cut.join() === one.exposure.cut.join(),
      ),
    );
    const least = kept[0];
    const marginK = least?.worst?.marginK ?? null;
    if (marginK !== null && (worstMargin === null || marginK < worstMargin)) worstMargin = marginK;
    if (least !== undefined && least.ruling !== known.ruling) changed.push(after.wire);
  }
  return { worstMargin, changed: changed.sort() };
}

function warmer(plan: ProofPlan): ProofPlan {
  const { routed, conductors } = plan.input;
  const hotter = <T extends { readonly ambientC: number }>(one: T): T => ({
    ...one,
    ambientC: one.ambientC + WARMER_K,
  });
  return {
    ...plan,
    input: {
      ...plan.input,
      routed: {
        ...routed,
        stretches: routed.stretches.map(hotter),
        stretchesOfWire: new Map(
          [...routed.stretchesOfWire].map(([wire, list]) => [wire, list.map(hotter)]),
        ),
      },
      conductors: new Map([...conductors].map(([id, one]) => [id, hotter(one)])),
    },
  };
}

/** Currents under this say nothing of a ratio, A. */
const LEAST_A = 0.5;

function moreCurrent(thereA: Float64Array, lastingA: Float64Array): number {
  return thereA.reduce(
    (most, a, k) => (lastingA[k]! >= LEAST_A ? Math.max(most, a / lastingA[k]!) : most),
    1,
  );
}
