import { readFileSync } from "node:fs";
import { parse } from "csv-parse/sync";
import { expect, test } from "vitest";
import { figure, resolveWire } from "../../../engine/tables/index.ts";
import { awgAreaMm2, awgDiameterMm } from "../../../engine/units/index.ts";

const rowsOf = (name: string): Record<string, string>[] =>
  parse(readFileSync(new URL(name, import.meta.url), "utf8"), { columns: true });

const resistivityOhmM = figure("copper", "resistivity-20", "value").value;
const tempcoPerK = figure("copper", "tempco-20", "value").value;

test.each(rowsOf("strandAreas.csv"))("$id: $typed holds $areaMm2 mm²", (row) => {
  const areaMm2 = resolveWire(row.typed!).areaMm2;
  expect(areaMm2).not.toBeNull();
  expect(Math.abs(areaMm2! - Number(row.areaMm2))).toBeLessThanOrEqual(Number(row.toleranceMm2));
});

test.each(rowsOf("awg.csv"))("$id: gauge index $gaugeIndex", (row) => {
  const gaugeIndex = Number(row.gaugeIndex);
  const ohmPerKm = (resistivityOhmM * 1e9) / awgAreaMm2(gaugeIndex);
  const pairs = [
    [row.diameterMm, awgDiameterMm(gaugeIndex)],
    [row.areaMm2, awgAreaMm2(gaugeIndex)],
    [row.solidOhmPerKm20, ohmPerKm],
  ] as const;
  for (const [printed, worked] of pairs) {
    if (printed === "-") continue;
    const percent = 100 * Math.abs(worked / Number(printed) - 1);
    expect(percent).toBeLessThanOrEqual(Number(row.tolerancePercent));
  }
});

test.each(rowsOf("resistanceRatios.csv"))("$id: copper at $temperatureC °C", (row) => {
  const ratio = 1 + tempcoPerK * (Number(row.temperatureC) - 20);
  expect(Math.abs(ratio - Number(row.ratioTo20))).toBeLessThanOrEqual(Number(row.tolerance));
});

test("R06: a metre of one square millimetre is 17.241 mΩ (IACS)", () => {
  expect(Math.abs(resistivityOhmM * 1e9 - 17.241)).toBeLessThanOrEqual(0.001);
});
