/** Exact by definition. */
export const MM_PER_INCH = 25.4;
export const MM_PER_FOOT = 304.8;
export const MM_PER_M = 1000;
export const MM_PER_CM = 10;

/** One circular mil: the area of a circle a thousandth of an inch across, mm². */
export const MM2_PER_CIRCULAR_MIL = (Math.PI / 4) * (MM_PER_INCH / 1000) ** 2;

/** Area of a round of the given diameter: A = π d² / 4, mm². */
export const circleAreaMm2 = (diameterMm: number): number => (Math.PI / 4) * diameterMm ** 2;

/** Diameter of the round of the given area: d = √(4 A / π), mm. */
export const circleDiameterMm = (areaMm2: number): number => Math.sqrt((4 * areaMm2) / Math.PI);
