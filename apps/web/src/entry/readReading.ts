import { readNumber } from "@copperwright/engine/words";

/** How people write a unit beside its name. */
const OTHER_NAMES: Readonly<Record<string, readonly string[]>> = {
  ohm: ["ohms", "Ω"],
  Mohm: ["Mohms", "MΩ"],
  V: ["v"],
  A: ["a"],
  W: ["w"],
};

/**
 * A meter's reading in the unit of its row, with or without the unit.
 *
 * @returns null where it is no number, or names another unit: 0.5 A in a row of mA is not half a milliampere
 */
export function readReading(typed: string, unit: string): number | null {
  const [, figure = "", letters = ""] = /^\s*([\d.,+\-−]*)\s*(.*?)\s*$/.exec(typed) ?? [];
  const isOwn = letters === "" || letters === unit || OTHER_NAMES[unit]?.includes(letters) === true;
  return isOwn ? readNumber(figure) : null;
}
