import { expect, test } from "vitest";
import { checkJob } from "../../engine/judge/index.ts";
import { codesOf, machine, newWire, only } from "./jobs.ts";

/** N09: a kill line may only meet earth. */
test("N09: switched live on the black/white kill wire of the enduro", () => {
  const wire = newWire("DX", ["KEY.BR", "KEY.KL"], {
    circuit: "kill",
    make: "thin-1.0",
    lengthMm: 80,
  });
  const result = checkJob(machine("d", wire));
  const finding = only(result, "kill-meets-battery");
  expect(finding.severity).toBe("stop");
  expect([finding.subject.id, ...finding.also]).toEqual(expect.arrayContaining(["CDI.KL", "DX"]));
  expect(result.verdict).toBe("stop");
});

test("N09: battery on the cut-out wire of the magneto single", () => {
  const wire = newWire("AX", ["CUT.1", "J1.1"], {
    circuit: "main",
    make: "thin-2.0",
    lengthMm: 300,
  });
  const finding = only(checkJob(machine("a", wire)), "kill-meets-battery");
  expect(finding.severity).toBe("stop");
  expect([finding.subject.id, ...finding.also]).toEqual(expect.arrayContaining(["MAG.K", "AX"]));
});

test("N09: the kill lines as wired are in order", () => {
  for (const name of ["a", "d"]) {
    expect(codesOf(checkJob(machine(name)))).not.toContain("kill-meets-battery");
  }
});

test("N09: on a coil ignition the rule is the other way about", () => {
  const role = {
    op: "set",
    list: "parts",
    id: "KILL",
    path: ["pins", 1, "role"],
    value: "kill",
  } as const;
  const finding = only(checkJob(machine("c", role)), "kill-earths-battery-ignition");
  expect(finding.severity).toBe("mend");
});
