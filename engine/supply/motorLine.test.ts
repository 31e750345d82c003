import { describe, expect, test } from "vitest";
import { compileNetwork, solveNetwork } from "../network/index.ts";
import { loadedA, motorLine, speedRatio } from "./motorLine.ts";
import { jobAt } from "./sampleModel.fixture.ts";

/** A battery, what corrosion adds and a motor that does not turn, one after the other. */
function circuit(emfV: number, internalOhm: number, addedOhm: number, motorOhm: number) {
  const compiled = compileNetwork({
    nodeCount: 3,
    leakOhm: 1e9,
    branches: [
      { id: "V1", a: 1, b: 0, law: { kind: "emf", emfV, internalOhm } },
      { id: "R1", a: 1, b: 2, law: { kind: "ohm", ohm: Math.max(addedOhm, 1e-9) } },
      { id: "R2", a: 2, b: 0, law: { kind: "ohm", ohm: motorOhm } },
    ],
  });
  const { branchA, nodeV } = solveNetwork(compiled);
  return { currentA: branchA[2]!, powerW: branchA[2]! * nodeV[2]! };
}

describe("starter circuits of textbooks", () => {
  test("automobile starter 0.05 ohm on 12 V behind 0.01 ohm, clean and corroded by 0.09 ohm", () => {
    // OpenStax College Physics, ch. 21: 200 A and 2.0 kW; 80 A and 320 W.
    const clean = circuit(12, 0.01, 0, 0.05);
    expect(clean.currentA).toBeCloseTo(200, 3);
    expect(clean.powerW).toBeCloseTo(2000, 1);
    const corroded = circuit(12, 0.01, 0.09, 0.05);
    expect(corroded.currentA).toBeCloseTo(80, 3);
    expect(corroded.powerW).toBeCloseTo(320, 2);
  });

  test("a weaker battery: 0.063 ohm behind 0.035 ohm, clean and corroded", () => {
    // homeworksource.com 1086761: 122.44 A and 63.829 A.
    expect(circuit(12, 0.035, 0, 0.063).currentA).toBeCloseTo(122.449, 2);
    expect(circuit(12, 0.035, 0.09, 0.063).currentA).toBeCloseTo(63.83, 2);
  });

  test("power lost to 0.1 ohm of corrosion", () => {
    // pearson.com physics, fig. 26-88: P / P0 = 0.3964.
    const ratio = circuit(12.5, 0.02, 0.1, 0.15).powerW / circuit(12.5, 0.02, 0, 0.15).powerW;
    expect(ratio).toBeCloseTo(0.3964, 4);
  });
});

test("what the battery and the motor look like by their volts at 50 A", () => {
  // Resnick-Halliday-Krane 33.11: (12 − 11.4) / 50 = 0.012 ohm, (11.4 − 3.0) / 50 = 0.168 ohm.
  const { currentA } = circuit(12, 0.012, 3 / 50, 0.168);
  expect(currentA).toBeCloseTo(50, 3);
});

test("a motor line: winding from stall; without a stall there is none", () => {
  const motor = jobAt("demos/minazuru-four.json").parts.find(({ kind }) => kind === "motor");
  if (motor?.kind !== "motor") throw new Error("the demo has a starter");
  const line = motorLine(motor)!;
  expect(line.windingOhm).toBeCloseTo(motor.stallV!.value / motor.stallA!.value, 12);
  const { stallA: _, ...unstated } = motor;
  expect(motorLine(unstated)).toBeNull();
});

test("more torque takes more current, with magnets more than with a series field, and turns slower", () => {
  const line = { windingOhm: 0.023, runOhm: 0.08, freeA: null, freeV: null };
  const warm = { v: 10, currentA: 125 };
  expect(loadedA(125, 2, "magnet")).toBe(250);
  expect(loadedA(125, 2, "series")).toBeCloseTo(125 * Math.SQRT2, 9);
  expect(speedRatio(line, warm, warm, "series")).toBe(1);
  expect(speedRatio(line, warm, { v: 6, currentA: 177 }, "series")).toBeLessThan(1);
  expect(speedRatio(line, warm, { v: 4, currentA: 250 }, "magnet")).toBe(0);
});
