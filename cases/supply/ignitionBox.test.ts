import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { OperateRequest } from "../../engine/index.ts";
import { checkedJob, operateJob, planJob, readJob, supplyOfJob } from "../../engine/index.ts";

const text = readFileSync(new URL("../../demos/brenzach-twin.json", import.meta.url), "utf8");

const read = readJob(text);
if (!read.ok) throw new Error("the demo reads");
const { job } = read;
const { conductors } = planJob(job);

function solved(request: OperateRequest) {
  const answer = operateJob(job, conductors, request);
  if (!answer.ok) throw new Error("the state is one");
  const { solution } = answer;
  const currentA = (id: string) => solution.elements.find(({ of }) => of === id)!.currentA;
  const coil = solution.loads.find(({ part }) => part === "CL1")!;
  return { solution, currentA, coil };
}

test("a box held on earths the coils: E = (R coil + R output) I, one current in E23, coils and E25", () => {
  const { solution, currentA, coil } = solved({ set: { KEY: "ON" } });
  // Volts at the two ends of the ignition's own wires, measured from the battery: what is left of 12.6 V after fuse, key and joints.
  const box = solution.loads.find(({ part }) => part === "IGB")!;
  // Box and coils hang on the same bar and the same earth, so the coils' current is the box's volts over 3 + 0.25 ohm, less
  // the millivolts of their own two wires.
  expect(coil.currentA).toBeGreaterThan((box.v - 0.05) / 3.25);
  expect(coil.currentA).toBeLessThan(box.v / 3.25);
  for (const wire of ["E23", "E25"]) expect(Math.abs(currentA(wire))).toBeCloseTo(coil.currentA, 6);
  // E26 takes both to earth, and F1 gives both.
  expect(Math.abs(currentA("E26"))).toBeCloseTo(coil.currentA + box.currentA, 6);
  expect(Math.abs(currentA("F1"))).toBeCloseTo(coil.currentA + box.currentA, 3);
});

test("a box without feed earths nothing: no spark with its own feed wire broken", () => {
  const { coil } = solved({ set: { KEY: "ON" }, open: ["E22"] });
  expect(Math.abs(coil.currentA)).toBeLessThan(1e-6);
});

test("the fuse that feeds the box counts its coils at their held-on current", () => {
  const { result } = checkedJob(job);
  const fuse = result.fuses.find(({ fuse: id }) => id === "F1")!;
  // Full battery, 12.7 V at most: (12.7 / 3.25) + 12.7 / 12 + the start relay's coil of under 0.3 A.
  expect(fuse.worstLoadA).toBeGreaterThan(4.6);
  expect(fuse.worstLoadA).toBeLessThan(12.7 / 3.25 + 12.7 / 12 + 0.3);
  expect(fuse.dies).toEqual(expect.arrayContaining(["CL1:15-1", "IGB:15-31"]));
});

test("riding, the coils draw their dwell: 0.4 of the held-on current", () => {
  const { demands } = supplyOfJob(job);
  const row = demands[0]!.rows.find(({ load }) => load === "CL1:15-1")!;
  expect(row.dutyRatio).toBe(0.4);
  expect(row.meanA).toBeCloseTo(0.4 * row.currentA, 9);
});
