/**
 * The unit a table column is in, read from the end of its own heading.
 *
 * `ratedA` is in A, `odMaxMm` in mm, `ohmPerKm20` in ohm/km. A heading that ends in none of these
 * is text. The list is the only place where a suffix is tied to a unit.
 */
const unitBySuffix: readonly (readonly [suffix: string, unit: string])[] = [
  ["OhmPerKm20", "ohm/km"],
  ["OhmM20", "ohm m"],
  ["PerK20", "1/K"],
  ["KgPerM3", "kg/m3"],
  ["JPerM3K", "J/m3K"],
  ["WPerMK", "W/mK"],
  ["MvPerK", "mV/K"],
  ["OhmAh", "ohm Ah"],
  ["PerMin", "1/min"],
  ["CircularMils", "cmil"],
  ["Percent", "%"],
  ["Exponent", "exponent"],
  ["Ratio", "ratio"],
  ["Count", "count"],
  ["Index", "index"],
  ["Mohm", "mohm"],
  ["Ohm", "ohm"],
  ["A2s", "A2s"],
  ["Mm2", "mm2"],
  ["Rpm", "rpm"],
  ["Mm", "mm"],
  ["Mv", "mV"],
  ["Nm", "N m"],
  ["Ah", "Ah"],
  ["Lm", "lm"],
  ["In", "in"],
  ["Ma", "mA"],
  ["A", "A"],
  ["V", "V"],
  ["W", "W"],
  ["C", "C"],
  ["K", "K"],
  ["N", "N"],
  ["S", "s"],
  ["H", "h"],
];

/** Units a `value,unit` table may use beside those above. */
const furtherUnits = [
  "A s0.5/mm2",
  "A/mm1.5",
  "A/mm2",
  "J/kgK",
  "Mohm",
  "Pa",
  "1/m2s",
  "W/m2K",
  "W/m2K4",
  "kg/m s K0.5",
  "W/mK1.5",
  "m/s2",
  "min",
  "day",
  "year",
];

/** Every unit word a cell in a `unit` column may hold. */
export const unitWords: ReadonlySet<string> = new Set([
  ...unitBySuffix.map(([, unit]) => unit),
  ...furtherUnits,
]);

/** The unit, or null where the column holds text. `value` takes its unit from the row. */
export function unitOfColumn(name: string): string | null {
  for (const [suffix, unit] of unitBySuffix) {
    const before = name[name.length - suffix.length - 1];
    if (name.endsWith(suffix) && before !== undefined && /[a-z0-9]/.test(before)) return unit;
    if (name === suffix[0]?.toLowerCase() + suffix.slice(1)) return unit;
  }
  return null;
}
