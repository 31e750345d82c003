/** Line widths, in steps of about root 2. Nothing on paper is thinner than 0.25 mm. */
export const LINE_MM = {
  leader: 0.25,
  detail: 0.35,
  symbol: 0.5,
  frame: 0.7,
} as const;

/** Nominal heights of capital letters on paper. Nothing is smaller than `fine`. */
export const CAP_MM = {
  fine: 1.8,
  text: 2.5,
  part: 3.5,
  wireNumber: 5,
  title: 7,
  display: 10,
} as const;

/** Distance of base lines for a capital height: twice it. */
export const linePitchMm = (capHeightMm: number): number => 2 * capHeightMm;

/** Diameter of a wire's coloured body by its area: three sizes, told apart at arm's length. Unknown area: the smallest. */
export function wireBodyMm(areaMm2: number | null): number {
  if (areaMm2 === null || areaMm2 <= 1.5) return 1;
  return areaMm2 < 10 ? 1.4 : 2;
}

/** Ink edge on each side of a wire's body. */
export const WIRE_EDGE_MM = 0.25;

/** Drawing grid: pins of symbols lie on it. */
export const GRID_MM = 2.5;
