import { expect, test } from "vitest";
import { ampsText, rangeText, restsOn, rpmText, spellText, voltsText } from "./supplyWords.ts";

test("a balance speed is never told lower than it is", () => {
  expect(rpmText(2331.2)).toBe("2\u2009340\u00a0rpm");
  expect(rpmText(null)).toBe("no speed");
});

test("times as one says them", () => {
  expect(spellText(null)).toBe("never");
  expect(spellText(1669)).toBe("28\u00a0min");
  expect(spellText(3 * 3600)).toBe("3.0\u00a0h");
  expect(spellText(60 * 86_400)).toBe("60\u00a0days");
});

test("small volts and amps in thousandths", () => {
  expect(voltsText(0.0034)).toBe("3.4\u00a0mV");
  expect(voltsText(0.34)).toBe("0.34\u00a0V");
  expect(ampsText(0.0032)).toBe("3.2\u00a0mA");
  expect(ampsText(3.2)).toBe("3.2\u00a0A");
});

test("two laws of light from the lesser to the greater", () => {
  expect(rangeText(1.2, 0.8)).toBe("80 to 120\u00a0%");
  expect(rangeText(1, 1)).toBe("100\u00a0%");
});

test("a remembered figure says so", () => {
  const figures = [
    { used: "brake lamp", value: 0.15, unit: "ratio", source: "a ride", confidence: "memory" },
  ];
  const answer = { figures } as unknown as Parameters<typeof restsOn>[0];
  expect(restsOn(answer, "brake lamp")).toBe("brake lamp 0.15 · a ride · from memory");
  expect(restsOn(answer, "none such")).toBe("");
});
