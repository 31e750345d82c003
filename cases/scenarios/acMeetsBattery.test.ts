import { expect, test } from "vitest";
import { checkJob } from "../../engine/judge/index.ts";
import { codesOf, machine, newWire, only } from "./jobs.ts";

/**
 * N06: the yellow alternating wire of the enduro on the battery's live. On the lighting coil hang 35 + 5 + 1.7 + 3 = 44.7 W
 * against 60 W.
 */
test("N06: alternating lighting joined to the battery", () => {
  const wire = newWire("DX", ["JA.3", "J9.3"], {
    circuit: "lighting",
    make: "thin-1.5",
    lengthMm: 300,
  });
  const result = checkJob(machine("d", wire));
  expect(result.verdict).toBe("stop");
  const finding = only(result, "ac-meets-battery");
  expect(finding.severity).toBe("stop");
  expect(finding.also).toEqual(expect.arrayContaining(["DX", "BAT", "REC", "ACR"]));
  expect(finding.numbers.onLoadW).toBeCloseTo(44.7, 9);
  expect(finding.numbers.sourceW).toBe(60);
});

test("N06: alternating lamps that are dark with the engine stopped are no fault", () => {
  const result = checkJob(machine("d"));
  expect(codesOf(result)).not.toContain("ac-meets-battery");
  const alternating = ["HEAD:MAIN-E", "HEAD:DIP-E", "REAR:TAIL-E", "SPL:L-E", "HBI:L-E"];
  for (const { subject, code } of result.findings) {
    expect(alternating, code).not.toContain(subject.id);
  }
});
