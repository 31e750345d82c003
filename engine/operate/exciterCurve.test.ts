import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob } from "../job/index.ts";
import { lawCurrentA } from "../network/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { exciterCurve, isBeyondKnee } from "./exciterCurve.ts";
import { fitGeneratorLine, generatorCurrentA, shortedCurrentA } from "./generatorLine.ts";
import { operateJob } from "./operateJob.ts";

const LINE = fitGeneratorLine(
  [
    { speedRpm: 1300, currentA: 16, atV: 13.5 },
    { speedRpm: 5000, currentA: 48, atV: 13.5 },
  ],
  { windingOhm: 0, diodeV: 1.4 },
)!;

describe("an exciter's curve", () => {
  for (const speedRpm of [600, 1500, 4000]) {
    const exciter = { line: LINE, speedRpm, emfV: 13 };
    const [free, limited] = [exciterCurve(exciter, false), exciterCurve(exciter, true)];
    const [kneeV, kneeA] = limited.points[1]!;

    test(`at ${speedRpm} rpm both curves meet at the knee, and each gives less than the other beyond it`, () => {
      expect(lawCurrentA(free, kneeV)).toBeCloseTo(kneeA, 9);
      expect(-lawCurrentA(limited, kneeV / 2)).toBeLessThan(-lawCurrentA(free, kneeV / 2));
      const nearEmfV = (kneeV + exciter.emfV) / 2;
      expect(-lawCurrentA(free, nearEmfV)).toBeLessThan(-lawCurrentA(limited, nearEmfV));
    });

    test(`at ${speedRpm} rpm it gives no more than the machine does: at the EMF, and into a short`, () => {
      expect(-kneeA).toBeCloseTo(Math.max(generatorCurrentA(LINE, speedRpm, 13), 1e-3), 9);
      expect(-lawCurrentA(limited, 0)).toBeLessThanOrEqual(shortedCurrentA(LINE, speedRpm) + 2e-3);
    });

    test(`at ${speedRpm} rpm the current tells which curve holds, and the knee itself changes nothing`, () => {
      expect([false, true].map((now) => isBeyondKnee(exciter, -kneeA, now))).toEqual([false, true]);
      expect(isBeyondKnee(exciter, -kneeA + 0.01, false)).toBe(true);
      expect(isBeyondKnee(exciter, -kneeA + 0.01, true)).toBe(true);
      expect(isBeyondKnee(exciter, -kneeA - 0.01, true)).toBe(false);
    });
  }
});

test("the field terminal of the twin shorted while it runs: the state settles, and no more flows than the windings give", () => {
  const read = readJob(readFileSync("demos/brenzach-twin.json", "utf8"));
  if (!read.ok) throw new Error("the demo does not read");
  const conductors = conductorsOf(read.job, routeJob(read.job));
  for (const speedRpm of [1500, 3000, 6000]) {
    for (const ohm of [0.001, 0.3, 0.6, 1, 5]) {
      const answer = operateJob(read.job, conductors, {
        set: { KEY: "ON" },
        engine: { mode: "running", speedRpm },
        short: [{ a: "ALT.DP", b: "ALT.E", ohm }],
      });
      if (!answer.ok) throw new Error(answer.refusals[0]!.message);
      const { solution } = answer;
      expect(solution.converged, `${speedRpm} rpm, ${ohm} ohm`).toBe(true);
      const shorted = solution.elements.find(({ kind }) => kind === "short")!;
      expect(Math.abs(shorted.currentA)).toBeLessThan(30);
    }
  }
});
