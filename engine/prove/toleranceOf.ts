import { seededRandom } from "../geometry/index.ts";
import { survivalOfWires } from "./allWires.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import type { ProofOptions } from "./proofInput.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { Tolerance } from "./proveResult.ts";
import type { JudgedWire } from "./wireFindings.ts";

/** What a reading may be off by: air in kelvins, largest currents as a share (battery, lamps, contacts together). */
const BAND = { ambientK: 10, currentRatio: 0.1 } as const;
const DEFAULT_SAMPLES = 32;
/** Wires with the least margin are drawn again; the others are further away than any band moves them. */
const WIRE_COUNT = 24;

/**
 * How much of the verdict hangs on readings: seeded draws within bands of air and largest currents, put to the survival theorem
 * for the wires with the least margin. Lengths do not enter the theorem, which takes every current up to the most.
 */
export function toleranceOf(
  plan: ProofPlan,
  tallies: CurrentTallies,
  judged: readonly JudgedWire[],
  options: ProofOptions,
): Tolerance {
  const seed = options.seed ?? 1;
  const samples = options.toleranceSampleCount ?? DEFAULT_SAMPLES;
  const random = seededRandom(seed);
  const marginOf = (one: JudgedWire): number => one.survival.answers[0]?.worst?.marginK ?? Infinity;
  const tight = [...judged]
    .filter((one) => marginOf(one) < Infinity)
    .sort((a, b) => marginOf(a) - marginOf(b))
    .slice(0, WIRE_COUNT);
  const before = new Map(tight.map(({ survival }) => [survival.wire, survival.ruling]));
  const changes = new Set<string>();
  let worstMargin: number | null = null;
  for (let n = 0; n < samples; n++) {
    const draw = (): number => 2 * random() - 1;
    const warmerK = BAND.ambientK * draw();
    const ratio = 1 + BAND.currentRatio * draw();
    const { routed, conductors } = plan.input;
    const drawn: ProofPlan = {
      ...plan,
      input: {
        ...plan.input,
        routed: {
          ...routed,
          stretches: routed.stretches.map((one) => ({ ...one, ambientC: one.ambientC + warmerK })),
          stretchesOfWire: new Map(
            [...routed.stretchesOfWire].map(([wire, list]) => [
              wire,
              list.map((one) => ({ ...one, ambientC: one.ambientC + warmerK })),
            ]),
          ),
        },
        conductors: new Map(
          [...conductors].map(([id, one]) => [id, { ...one, ambientC: one.ambientC + warmerK }]),
        ),
      },
    };
    const lastingA = tallies.lastingA.map((currentA) => currentA * ratio);
    for (const { wire, ruling, answers } of survivalOfWires(drawn, lastingA, [...before.keys()])) {
      const marginK = answers[0]?.worst?.marginK ?? null;
      if (marginK !== null && (worstMargin === null || marginK < worstMargin))
        worstMargin = marginK;
      if (ruling !== before.get(wire)) changes.add(wire);
    }
  }
  return {
    method: "seeded draws of air and largest currents, survival theorem over every current",
    seed,
    samples,
    worstMargin,
    verdictChanges: [...changes].sort(),
  };
}
