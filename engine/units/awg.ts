import { circleAreaMm2 } from "./exactUnits.ts";

/**
 * Diameter of a solid wire of American gauge: d = 0.127 mm · 92^((36 − n) / 39).
 *
 * @param gaugeIndex  n; 0, −1, −2, −3 for 1/0, 2/0, 3/0, 4/0.
 * @returns mm. A definition: 36 is 0.0050 in and 4/0 is 0.4600 in.
 * @source  ASTM B258.
 */
export const awgDiameterMm = (gaugeIndex: number): number => 0.127 * 92 ** ((36 - gaugeIndex) / 39);

/** Area of a solid wire of American gauge, mm². Vehicle cable of the same gauge may hold less. */
export const awgAreaMm2 = (gaugeIndex: number): number => circleAreaMm2(awgDiameterMm(gaugeIndex));

/** "2/0" for −1, "16" for 16. */
export const printAwg = (gaugeIndex: number): string =>
  gaugeIndex <= 0 ? `${1 - gaugeIndex}/0` : String(gaugeIndex);
