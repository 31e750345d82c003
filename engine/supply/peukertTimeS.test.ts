import { expect, test } from "vitest";
import { batteryTimeS, peukertTimeS } from "./peukertTimeS.ts";

const hours = (timeS: number): number => timeS / 3600;

test("a hundred ampere-hours on a 1 A basis, exponent 1.2, at 5 A", () => {
  // electrotechnik.net 2010/01, Peukert's law: printed 14.5 h.
  const timeS = peukertTimeS({
    capacityAh: 100,
    ratingTimeS: 100 * 3600,
    exponent: 1.2,
    currentA: 5,
  });
  expect(hours(timeS)).toBeCloseTo(14.5, 1);
});

test("the exponent two published runtimes imply gives the second of them", () => {
  // A battery shop's page: 20 h at 5 A and about 7.5 h at 10 A, so k = ln(20 / 7.5) / ln 2 = 1.415.
  const timeS = peukertTimeS({
    capacityAh: 100,
    ratingTimeS: 20 * 3600,
    exponent: 1.415,
    currentA: 10,
  });
  expect(hours(timeS)).toBeCloseTo(7.5, 2);
});

test("plain runtimes: 70 Ah at 3.5 A, 12 Ah at 6 A", () => {
  // Lessons In Electric Circuits, vol. DC, batteries; motorcycle battery leaflet (72 W at 12 V).
  const plain = { ratingTimeS: 3600, exponent: 1 };
  expect(hours(peukertTimeS({ ...plain, capacityAh: 70, currentA: 3.5 }))).toBeCloseTo(20, 9);
  expect(hours(peukertTimeS({ ...plain, capacityAh: 12, currentA: 72 / 12 }))).toBeCloseTo(2, 9);
});

test("below the rated current a battery gives its capacity and no more; above it less", () => {
  const battery = { capacityAh: 14, chemistry: "flooded" as const };
  expect(hours(batteryTimeS(battery, 0.1))).toBeCloseTo(140, 9);
  expect(hours(batteryTimeS(battery, 14))).toBeLessThan(1);
  expect(() => batteryTimeS(battery, 0)).toThrow();
});
