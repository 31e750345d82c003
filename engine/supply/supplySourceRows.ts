import type { ChargingSource } from "./chargingSource.ts";
import type { SupplyModel } from "./supplyModel.ts";

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
    };
  });
}

const THOUSAND = 1000;
