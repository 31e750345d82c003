import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { readJob } from "../job/index.ts";
import { checkJob } from "./checkJob.ts";

function wiresOf(demo: string) {
  const read = readJob(readFileSync(new URL(`../../${demo}`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error("refused");
  return new Map(checkJob(read.job).wires.map((row) => [row.wire, row]));
}

describe("a wire on an alternating net is not shown idle", () => {
  test("phases of the four carry the output's share, 14.5 A x pi / (3 sqrt 2) and a little more into a short", () => {
    const wires = wiresOf("demos/minazuru-four.json");
    // Shunt unit: the leads carry the ceiling, which lies a little above the output stated at 5000 rpm.
    const statedA = (14.5 * Math.PI) / (3 * Math.SQRT2);
    for (const id of ["C11", "C12", "C13", "C11a"]) {
      expect(wires.get(id)!.worstA).toBeGreaterThan(statedA);
      expect(wires.get(id)!.worstA).toBeLessThan(statedA * 1.15);
    }
  });

  test("lighting of the enduro: coil lead at the 5 A it is stated for, headlamp lead at its 35 W", () => {
    const wires = wiresOf("demos/orivesta-enduro.json");
    // The coil is stated at 5 A into 12 V at 6000 rpm; into the 13.5 V its regulator holds it gives a little less.
    expect(wires.get("D08")!.worstA).toBeGreaterThan(4.5);
    expect(wires.get("D08")!.worstA).toBeLessThanOrEqual(5);
    // 35 W at 12 V is 2.9 A; a dimmer net draws less, by the filament law no less than nine tenths.
    expect(wires.get("HEAD.MAIN")!.worstA).toBeGreaterThan(0.9 * (35 / 12));
    expect(wires.get("HEAD.MAIN")!.worstA).toBeLessThan(1.1 * (35 / 12));
  });

  test("what is not computed is not known, and says why", () => {
    const wires = wiresOf("demos/orivesta-enduro.json");
    expect(wires.get("D12")).toMatchObject({ worstA: null, why: expect.stringMatching(/pulses/) });
    // No output points in this one: what its phases carry is unknown, not nought.
    const bare = wiresOf("cases/reference-machines/c/job.json");
    const phase = [...bare.values()].find(({ from }) => from.startsWith("ALT.Y"))!;
    expect(phase).toMatchObject({ worstA: null, why: expect.stringMatching(/two speeds/) });
  });

  test("a starter cable tells what it carries while the engine is turned over", () => {
    const wires = wiresOf("demos/minazuru-four.json");
    expect(wires.get("C04")!.crankingA).toBeGreaterThan(50);
    expect(wires.get("C04")!.crankingState).toContain("operate");
  });
});
