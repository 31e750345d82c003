import { MM_PER_INCH } from "./exactUnits.ts";
import { printQuantity } from "./printQuantity.ts";
import { type Stranding, strandAreaMm2 } from "./strandAreaMm2.ts";

/** Stranding in the trade's way: `32/0.20`, or `14/.012 in` where the strand is in whole mils. */
export function printStranding(stranding: Stranding): string {
  const { strandCount, strandDiameterMm } = stranding;
  const mils = (strandDiameterMm / MM_PER_INCH) * 1000;
  const isHundredths = nearWhole(strandDiameterMm * 100);
  if (!isHundredths && nearWhole(mils))
    return `${strandCount}/.${String(Math.round(mils)).padStart(3, "0")} in`;
  return `${strandCount}/${strandDiameterMm.toFixed(isHundredths ? 2 : 3)}`;
}

/** Stranding with the copper counted from it: `32/0.20 (1.01 mm²)`. */
export const printWire = (stranding: Stranding): string =>
  `${printStranding(stranding)} (${printQuantity(strandAreaMm2(stranding), "mm2")})`;

const nearWhole = (value: number): boolean => Math.abs(value - Math.round(value)) < 1e-6;
