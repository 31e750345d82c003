import { expect, test } from "vitest";
import {
  fitGeneratorLine,
  type GeneratorLine,
  generatorCurrentA,
  shortedCurrentA,
} from "../../engine/operate/index.ts";
import { ALTERNATOR, type Behind, transient } from "./rectifierTransient.ts";

/**
 * The averaged line of a rectified alternator (an ellipse through two output points) against the same circuit switched diode by diode. The
 * error is stated for both ways of choosing the points.
 */
const BEHIND: Behind = { emfV: 12.6, internalOhm: 0.05, loadOhm: 4, setV: null };
const SPEEDS = [2000, 2500, 3000, 4000, 5000, 6000, 8000] as const;
const ROWS = SPEEDS.map((speedRpm) => ({ speedRpm, ...transient(speedRpm, BEHIND) }));

function lineThrough(lowRpm: number, highRpm: number, extra = ROWS): GeneratorLine {
  const points = [lowRpm, highRpm].map((speedRpm) => {
    const row = extra.find((one) => one.speedRpm === speedRpm)!;
    return { speedRpm, currentA: row.outputA, atV: row.outputV };
  });
  // Per-phase resistance on the direct-current side of a three-phase bridge: π²/6 of it.
  const windingOhm = (ALTERNATOR.phaseOhm * Math.PI ** 2) / 6;
  return fitGeneratorLine(points, { windingOhm, diodeV: 1.4 })!;
}

const ceilingA = (line: GeneratorLine): number => line.emfPerRpmRatio / line.reactancePerRpmRatio;

test("two points in the working range: within 1 % of the ceiling from the lower one up, short of the truth below it", () => {
  const line = lineThrough(2500, 6000);
  for (const { speedRpm, outputA, outputV } of ROWS) {
    const away = (generatorCurrentA(line, speedRpm, outputV) - outputA) / ceilingA(line);
    if (speedRpm >= 2500) expect(Math.abs(away), `${speedRpm} rpm`).toBeLessThan(0.01);
    // Pulses that do not meet: the averaged line begins later than the diodes.
    else expect(away > -0.1 && away <= 0, `${speedRpm} rpm: ${away}`).toBe(true);
  }
});

test("a lower point where the pulses do not meet yet makes the line up to a fifth of the ceiling too hopeful between the points", () => {
  const line = lineThrough(2000, 6000);
  const away = ROWS.map(
    ({ speedRpm, outputA, outputV }) =>
      (generatorCurrentA(line, speedRpm, outputV) - outputA) / ceilingA(line),
  );
  expect(Math.max(...away)).toBeGreaterThan(0.05);
  expect(Math.max(...away)).toBeLessThan(0.2);
});

test("a lead of three carries π / (3 √2) of the output, rms", () => {
  for (const { speedRpm, phaseA, outputA } of ROWS) {
    if (speedRpm < 3000) continue;
    expect(Math.abs(phaseA / outputA / (Math.PI / (3 * Math.SQRT2)) - 1)).toBeLessThan(0.01);
  }
});

test("a shunt regulator holds the volts and lets the winding carry nearly its ceiling whatever is used", () => {
  const line = lineThrough(2500, 6000);
  for (const speedRpm of [3000, 5000]) {
    const little = transient(speedRpm, { ...BEHIND, emfV: 14.2, setV: 14.4 });
    expect(Math.abs(little.outputV / 14.4 - 1)).toBeLessThan(0.01);
    const predictedA = (Math.PI / (3 * Math.SQRT2)) * shortedCurrentA(line, speedRpm);
    // Between the shorts it carries less: the averaged figure is on the hot side by up to a tenth.
    expect(little.phaseA).toBeLessThan(predictedA);
    expect(little.phaseA).toBeGreaterThan(0.9 * predictedA);
    // With less than half of its output used.
    expect(little.outputA).toBeLessThan(0.6 * (predictedA / (Math.PI / (3 * Math.SQRT2))));
  }
});
