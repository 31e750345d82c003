import { follow, type Lump } from "./transient.ts";

/** A current that stays the same for a while. */
export interface CurrentStep {
  readonly durationS: number;
  readonly currentA: number;
}

export interface HeatHistory {
  readonly endC: number;
  readonly peakC: number;
  /** End of the step that holds the peak, s from the beginning; 0 when it only ever cooled. */
  readonly peakAtS: number;
  /** Temperature at the end of each step, °C; stops early at the ceiling. */
  readonly stepEndsC: readonly number[];
  /** True when the loss table ended before the history did: the peak is then at least `peakC`. */
  readonly overCeiling: boolean;
}

/**
 * Temperature of a lump through a current that changes in steps. Under a constant current the temperature moves one
 * way only, so the peak is at the start or at the end of a step.
 */
export function transientHistory(
  lump: Lump,
  startC: number,
  steps: readonly CurrentStep[],
): HeatHistory {
  let endC = startC;
  let peakC = startC;
  let peakAtS = 0;
  let spentS = 0;
  const stepEndsC: number[] = [];
  for (const { durationS, currentA } of steps) {
    const moment = follow(lump, { startC: endC, currentA }, { timeS: durationS });
    spentS += durationS;
    endC = moment.temperatureC;
    stepEndsC.push(endC);
    if (endC > peakC) {
      peakC = endC;
      peakAtS = spentS;
    }
    if (moment.stoppedBy === "ceiling") {
      return { endC, peakC, peakAtS, stepEndsC, overCeiling: true };
    }
  }
  return { endC, peakC, peakAtS, stepEndsC, overCeiling: false };
}
