import type { ChargingSource } from "./chargingSource.ts";
import type { SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";

/** A charging source in a few figures. */
export interface SupplySourceRow {
  readonly generator: string;
  readonly type: ChargingSource["type"];
  readonly regulator: string | null;
  readonly ratedW: number | null;
  /** k of E = k n, volts for a thousand revolutions a minute; null: output not known at two speeds. */
  readonly emfPerThousandV: number | null;
  /** k/c: what it can never exceed, also into a short. */
  readonly ceilingA: number | null;
  /** Least speed at which it gives anything into the battery at rest. */
  readonly cutInRpm: number | null;
  readonly setV: number | null;
  readonly heldV: number | null;
  readonly leadOhm: number;
  readonly bandPercent: number;
  readonly isShunt: boolean;
  readonly why: string | null;
  /** What its two points leave in doubt; null: nothing. */
  readonly note: string | null;
}

/** Sources of the first lighting state: the same in every one but for the volts its wires lose. */
export function supplySourceRows({ states, battery }: SupplyModel): readonly SupplySourceRow[] {
  const restV = battery?.restPoints.at(-1)?.[1] ?? 0;
  return (states[0]?.sources ?? []).map((source) => {
    const { bareLine: line } = source;
    return {
      generator: source.generator,
      type: source.type,
      regulator: source.regulator,
      ratedW: source.ratedW,
      emfPerThousandV: line === null ? null : THOUSAND * line.emfPerRpmRatio,
      ceilingA: line === null ? null : line.emfPerRpmRatio / line.reactancePerRpmRatio,
      cutInRpm: line === null ? null : (restV + line.diodeV) / line.emfPerRpmRatio,
      setV: source.setV,
      heldV: source.heldV,
      leadOhm: source.leadOhm,
      bandPercent: 100 * source.bandRatio,
      isShunt: source.isShunt,
      why: source.why,
      note: lowPointNote(source),
    };
  });
}

const THOUSAND = 1000;
/** Rms of a lead over the mean of the output: above this there is one winding, below three. */
const SINGLE_OVER_RATIO = 0.9;

/**
 * A lower point near cut-in, where the pulses of a rectifier do not meet yet, makes the ellipse too hopeful between its points:
 * `cases/supply/rectifierTransient.test.ts` and `singlePhaseTransient.test.ts` measure by how much.
 */
function lowPointNote({ bareLine, lowestA, type, phaseRatio }: ChargingSource): string | null {
  if (bareLine === null || lowestA === null || type === "dynamo") return null;
  const ceilingA = bareLine.emfPerRpmRatio / bareLine.reactancePerRpmRatio;
  const isSingle = phaseRatio !== null && phaseRatio > SINGLE_OVER_RATIO;
  const leastRatio = supplyRule(isSingle ? "point-low-single" : "point-low");
  if (lowestA >= leastRatio * ceilingA) return null;
  return "Its lower output point lies near cut-in, so between the points it may give up to a fifth of its ceiling less: measure one in the working range.";
}
