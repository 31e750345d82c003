import { printedUnits, printNumber, printQuantity } from "../units/index.ts";

/** Last letters of a key → the unit its value is printed with. The longest that fits counts. */
const UNIT_OF_ENDING: readonly (readonly [ending: string, unit: string])[] = [
  ["Percent", "%"],
  ["Mohm", "mohm"],
  ["Mm2", "mm2"],
  ["A2s", "A2s"],
  ["Ohm", "ohm"],
  ["Rpm", "rpm"],
  ["Mm", "mm"],
  ["Ah", "Ah"],
  ["Ma", "mA"],
  ["Lm", "lm"],
  ["Nm", "N m"],
  ["V", "V"],
  ["A", "A"],
  ["W", "W"],
  ["C", "C"],
  ["K", "K"],
  ["S", "s"],
  ["H", "h"],
  ["M", "m"],
  ["N", "N"],
];

const LONGEST_TEXT_COUNT = 400;

/**
 * One value of a finding for reading: a figure with the unit its key ends in, a count as a whole number, text as it is.
 *
 * @throws Error where the key says no unit: a number that nobody could read is a bug.
 */
export function numberInWords(key: string, value: number | string): string {
  if (typeof value === "string") {
    return value.length > LONGEST_TEXT_COUNT ? `${value.slice(0, LONGEST_TEXT_COUNT)}…` : value;
  }
  if (/Count$|Index$|^count$/.test(key)) return printNumber(value, 0);
  if (/Ratio$|Factor$/.test(key)) return printNumber(value, 2);
  const found = UNIT_OF_ENDING.find(([ending]) => key.endsWith(ending));
  if (found === undefined) throw new Error(`a finding's number "${key}" says no unit`);
  return quantityInWords(value, found[1]);
}

/** A figure with a unit as tables name it; a bare number where the unit is a ratio or a count. */
export function quantityInWords(value: number, unit: string): string {
  if (printedUnits.includes(unit)) return printQuantity(value, unit);
  if (unit === "ratio") return printNumber(value, 2);
  return unit === "count" ? printNumber(value, 0) : `${value} ${unit}`;
}
