import { shortedCurrentA } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import { givenA } from "./chargingSource.ts";
import { settledVolts } from "./settledVolts.ts";
import type { ModelState, SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";
import { zenerHeatW, zenerLaws } from "./zeners.ts";

/** Where the watts of a source go that are not used, at one speed. */
export interface HeatRow {
  readonly speedRpm: number;
  /** Given to the machine, A. */
  readonly outputA: number;
  /** In the winding, referred to the direct-current side, A. */
  readonly windingA: number;
  /** I²R of the winding; null: its resistance is not stated. */
  readonly windingW: number | null;
  /** In rectifier and regulator. */
  readonly unitW: number;
  /** In zeners across the supply, which burn what nothing else takes; null: there are none. */
  readonly zenerW: number | null;
}

export interface SourceHeat {
  readonly generator: string;
  readonly state: string;
  /** A shunt unit loads the winding with all it can give, whatever is used. */
  readonly isShunt: boolean;
  readonly rows: readonly HeatRow[];
}

const NEARLY_FULL_RATIO = 0.95;

/**
 * Heat of winding and unit with the battery nearly full. A shunt unit short-circuits the winding for the share of the time it does not
 * need it: the winding carries its short-circuit current all the time and the unit drops the rectifier's volts for the share that is
 * used and the thyristors' for the rest. Others load the winding with what is used; a zener across the supply uses what nothing else takes.
 */
export function sourceHeat(model: SupplyModel, state: ModelState): readonly SourceHeat[] {
  const diodeV = figure("elementRules", "rectifier-drop", "value").value;
  const shortV = supplyRule("thyristor-drop");
  const zeners = zenerLaws(model.averaged);
  return state.sources.flatMap((source): SourceHeat[] => {
    const { bareLine, fastestRpm, isShunt, type } = source;
    if (bareLine === null || fastestRpm === null) return [];
    const rows = [0.4, 0.6, 0.8, 1].map((ratio): HeatRow => {
      const speedRpm = Math.round(ratio * fastestRpm);
      const v = settledVolts(model.battery, state, speedRpm, NEARLY_FULL_RATIO);
      const outputA = givenA(source, speedRpm, v);
      const windingA = isShunt ? Math.max(outputA, shortedCurrentA(bareLine, speedRpm)) : outputA;
      const usedW = (type === "dynamo" ? 0 : diodeV) * outputA;
      return {
        speedRpm,
        outputA,
        windingA,
        windingW: bareLine.windingOhm > 0 ? windingA ** 2 * bareLine.windingOhm : null,
        unitW: usedW + (isShunt ? shortV * (windingA - outputA) : 0),
        zenerW: zeners.length === 0 ? null : zenerHeatW(zeners, v),
      };
    });
    return [{ generator: source.generator, state: state.id, isShunt, rows }];
  });
}
