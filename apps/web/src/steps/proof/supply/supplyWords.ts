import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";

const TOLD_RPM = 10;
const HOUR_S = 3600;
const DAY_S = 24 * HOUR_S;
const MINUTE_S = 60;
const SMALL_V = 0.01;
const SMALL_A = 0.1;
/** Volts of the system the tables speak of. */
const TABLE_V = 12;

/** Speeds are told to ten, upwards: nothing here is known better. */
export const rpmText = (speedRpm: number | null): string =>
  speedRpm === null ? "no speed" : printQuantity(Math.ceil(speedRpm / TOLD_RPM) * TOLD_RPM, "rpm");

/** Under a hundredth of a volt in millivolts. */
export const voltsText = (v: number): string =>
  Math.abs(v) < SMALL_V ? `${printNumber(1000 * v, 1)}\u00a0mV` : printQuantity(v, "V");

export const ampsText = (currentA: number): string =>
  Math.abs(currentA) < SMALL_A
    ? printQuantity(1000 * currentA, "mA")
    : printQuantity(currentA, "A");

/** A time as one says it: minutes, hours, or from two days on in days; null: never. */
export function spellText(timeS: number | null): string {
  if (timeS === null) return "never";
  if (timeS >= 2 * DAY_S) return `${printNumber(timeS / DAY_S, 0)}\u00a0days`;
  if (timeS >= 2 * HOUR_S) return `${printNumber(timeS / HOUR_S, 1)}\u00a0h`;
  return `${printNumber(timeS / MINUTE_S, 0)}\u00a0min`;
}

export const shareText = (ratio: number): string => `${printNumber(100 * ratio, 0)}\u00a0%`;

/** From the lesser to the greater; one figure where both are told alike. */
export function rangeText(a: number, b: number): string {
  const [low, high] = [shareText(Math.min(a, b)), shareText(Math.max(a, b))];
  return low === high ? low : `${low.replace("\u00a0%", "")} to ${high}`;
}

/** A table figure the answer rests on, as the sum line ends: what it is, whose, how sure. */
export function restsOn(
  { figures, nominalV }: Pick<SupplyAnswer, "figures" | "nominalV">,
  used: string,
): string {
  const found = figures.find((one) => one.used === used);
  if (found === undefined) return "";
  const sure = found.confidence === "memory" ? "from memory" : found.confidence;
  const unit = found.unit === "ratio" ? "" : `\u00a0${found.unit}`;
  const at12V = found.unit === "V" && nominalV !== TABLE_V ? " on 12\u00a0V" : "";
  return `${used} ${found.value}${unit}${at12V} · ${found.source} · ${sure}`;
}
