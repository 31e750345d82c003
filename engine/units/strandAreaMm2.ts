import { circleAreaMm2 } from "./exactUnits.ts";

/** The stranding of one conductor. */
export type Stranding = { readonly strandCount: number; readonly strandDiameterMm: number };

/**
 * Copper of a stranded conductor, counted strand by strand: A = N π d² / 4.
 *
 * @param stranding.strandCount       how many strands.
 * @param stranding.strandDiameterMm  one strand, copper only, mm.
 * @returns area, mm²; never the trade name.
 * @example strandAreaMm2({ strandCount: 32, strandDiameterMm: 0.2 }) // 1.005
 */
export const strandAreaMm2 = (stranding: Stranding): number =>
  stranding.strandCount * circleAreaMm2(stranding.strandDiameterMm);
