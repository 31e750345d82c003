import { expect, test } from "vitest";
import { readReading } from "./readReading.ts";

test.each<readonly [string, string, number | null]>([
  ["12.4", "V", 12.4],
  [" 12,4 V ", "V", 12.4],
  ["12v", "V", 12],
  ["0.02 Ω", "ohm", 0.02],
  ["0.02 ohms", "ohm", 0.02],
  ["4 mA", "mA", 4],
  ["−0.3", "V", -0.3],
  // Another unit would be a thousand times off.
  ["0.5 A", "mA", null],
  ["12 mV", "V", null],
  ["20 MΩ", "ohm", null],
  ["4 MA", "mA", null],
  ["abc", "ohm", null],
  ["", "ohm", null],
  ["V", "V", null],
  ["1,600", "V", null],
  ["1 2", "V", null],
])("%j in a row of %s is %s", (typed, unit, read) => {
  expect(readReading(typed, unit)).toBe(read);
});
