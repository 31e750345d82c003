const NO_BREAK_SPACE = "\u00a0";
const THIN_SPACE = "\u2009";
const MINUS = "\u2212";

/** How a unit is printed, and how many decimals the instrument that reads it shows. */
const manners: Readonly<Record<string, { sign: string; decimals: (value: number) => number }>> = {
  V: { sign: "V", decimals: (value) => (value < 1 ? 2 : 1) },
  A: { sign: "A", decimals: () => 1 },
  mA: { sign: "mA", decimals: (value) => (value < 10 ? 1 : 0) },
  W: { sign: "W", decimals: (value) => (value < 10 ? 1 : 0) },
  mm: { sign: "mm", decimals: () => 0 },
  m: { sign: "m", decimals: () => 2 },
  mm2: { sign: "mm²", decimals: () => 2 },
  C: { sign: "°C", decimals: () => 0 },
  K: { sign: "K", decimals: () => 0 },
  ohm: { sign: "Ω", decimals: (value) => (value < 1 ? 3 : value < 10 ? 2 : 1) },
  mohm: { sign: "mΩ", decimals: (value) => (value < 10 ? 2 : 1) },
  Mohm: { sign: "MΩ", decimals: () => 0 },
  "ohm/km": { sign: "Ω/km", decimals: (value) => (value < 10 ? 2 : 1) },
  s: { sign: "s", decimals: (value) => (value < 1 ? 2 : value < 10 ? 1 : 0) },
  h: { sign: "h", decimals: () => 1 },
  Ah: { sign: "Ah", decimals: () => 1 },
  A2s: { sign: "A²s", decimals: (value) => (value < 10 ? 1 : 0) },
  N: { sign: "N", decimals: () => 0 },
  "N m": { sign: "N\u00a0m", decimals: () => 1 },
  lm: { sign: "lm", decimals: () => 0 },
  rpm: { sign: "rpm", decimals: () => 0 },
  "%": { sign: "%", decimals: (value) => (value < 10 ? 1 : 0) },
};

/** The units `printQuantity` knows. */
export const printedUnits: readonly string[] = Object.keys(manners);

/**
 * A figure and its unit for reading: `12.3 V`, `0.21 V`, `1 370 mm`, `1.01 mm²`.
 *
 * No-break space before the unit, thin space in thousands, a true minus, decimals as the
 * instrument shows them. The rounded text is for eyes only and is never read back.
 *
 * @throws Error for a value that is not finite or a unit not known: both are bugs.
 */
export function printQuantity(value: number, unit: string): string {
  const manner = manners[unit];
  if (manner === undefined) throw new Error(`printQuantity: no manner for unit "${unit}"`);
  const digits = printNumber(value, manner.decimals(Math.abs(value)));
  return `${digits}${NO_BREAK_SPACE}${manner.sign}`;
}

/** A number with so many decimals, thin spaces in its thousands and a true minus. */
export function printNumber(value: number, decimalCount: number): string {
  if (!Number.isFinite(value)) throw new Error(`printNumber: ${value} is not a figure`);
  const [whole, part] = Math.abs(value).toFixed(decimalCount).split(".");
  const grouped = whole!.replace(/\B(?=(\d{3})+$)/g, THIN_SPACE);
  const digits = part === undefined ? grouped : `${grouped}.${part}`;
  return value < 0 && /[1-9]/.test(digits) ? `${MINUS}${digits}` : digits;
}
