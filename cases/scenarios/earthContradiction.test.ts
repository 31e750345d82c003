import { expect, test } from "vitest";
import { checkJob } from "../../engine/judge/index.ts";
import { machine, only } from "./jobs.ts";

/** N02: the header says negative earth, the wires join battery + to the frame. Nothing may be judged on either. */
test("N02: a declared earth the wires contradict stops everything else", () => {
  const edit = {
    op: "set",
    list: "job",
    path: ["supply", "earthPolarity"],
    value: "negative",
  } as const;
  const result = checkJob(machine("a", edit));
  expect(result.verdict).toBe("stop");
  expect(result.findings).toHaveLength(1);
  const finding = only(result, "earth-polarity-contradiction");
  expect(finding.severity).toBe("stop");
  expect(finding.message).toContain("negative earth");
  expect(finding.message).toContain("BAT.+");
  expect(finding.also).toEqual(expect.arrayContaining(["A01", "AMM", "CB"]));
  expect(result.withheld).not.toBeNull();
  expect([result.loads, result.fuses]).toEqual([[], []]);
});

test("N02: with the right earth the same machine is judged", () => {
  const result = checkJob(machine("a"));
  expect(result.withheld).toBeNull();
  expect(result.loads.length).toBeGreaterThan(0);
  expect(result.findings.map(({ code }) => code)).not.toContain("earth-polarity-contradiction");
});
