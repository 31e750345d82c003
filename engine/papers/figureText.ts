import { printedUnits, printNumber, printQuantity } from "../units/index.ts";

/** Any figure of a working: as an instrument shows it where the unit has a manner, else to four significant figures. */
export function figureText(value: number, unit: string): string {
  if (!Number.isFinite(value)) return unit === "" ? "no limit" : `no limit ${unit}`;
  if (printedUnits.includes(unit)) return printQuantity(value, unit);
  const decimalCount =
    value === 0 ? 0 : Math.max(0, Math.min(6, 3 - Math.floor(Math.log10(Math.abs(value)))));
  const digits = printNumber(value, Number.isInteger(value) ? 0 : decimalCount);
  return unit === "" || unit === "1" ? digits : `${digits} ${unit}`;
}
