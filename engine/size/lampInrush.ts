import { type Figure, figure } from "../tables/index.ts";

export interface Inrush {
  readonly peakA: number;
  /** ½ · peak² · τ, A²s. */
  readonly i2tA2s: number;
  readonly figures: readonly Figure[];
}

/**
 * Surge of cold filaments switched on together: the peak is a multiple of the running current and dies away
 * exponentially, unless the loop cannot give so much.
 *
 *   peak = least of ratio · I and V / R,   I²t = ½ · peak² · τ
 *
 * @param lamps.runningA  sum of the filaments' running currents, A.
 * @param lamps.supplyV   with `loopOhm`: battery volts, and resistance of battery, wires and contacts, Ω.
 * @source tables/lampInrush.
 */
export function lampInrush(lamps: {
  readonly runningA: number;
  readonly supplyV?: number;
  readonly loopOhm?: number;
}): Inrush {
  const ratio = figure("lampInrush", "peak-usual", "value");
  const settle = figure("lampInrush", "settle", "value");
  const loopA =
    lamps.supplyV === undefined || lamps.loopOhm === undefined
      ? Number.POSITIVE_INFINITY
      : lamps.supplyV / lamps.loopOhm;
  const peakA = Math.min(ratio.value * lamps.runningA, loopA);
  return { peakA, i2tA2s: (peakA ** 2 * settle.value) / 2, figures: [ratio, settle] };
}
