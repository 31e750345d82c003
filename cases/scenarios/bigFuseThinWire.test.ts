import { describe, expect, test } from "vitest";
import { resizeWire, setFuseRating } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import { DEAD_SHORT_OHM, operateJob } from "../../engine/operate/index.ts";
import { conductorsOf, routeJob } from "../../engine/route/index.ts";
import { machine, only } from "./jobs.ts";

/**
 * N01 of the acceptance scenarios: the tail wire of the 6 V single in 0.5 mm2, the old fuse marked 35 and nobody knows which
 * current that is. 0.5 mm2 thin wall is listed at 11 A; a blow mark of 35 is about 17 A carried, by the half rule 17.5.
 */
describe("N01: a 35 A fuse of unknown mark before 0.5 mm2", () => {
  const unknownMark = {
    op: "set",
    list: "parts",
    id: "F1",
    path: ["marking"],
    value: "unknown",
  } as const;
  const job = machine(
    "a",
    resizeWire({ wire: "A19", make: "thin-0.5" }),
    setFuseRating("F1", 35),
    unknownMark,
  );
  const result = checkJob(job);
  const finding = only(result, "fuse-over-wire");

  test("is a stop", () => {
    expect(result.verdict).toBe("stop");
    expect(finding.severity).toBe("stop");
    expect(finding.acceptable).toBe(false);
  });

  test("names wire, list and both readings, and that it fails either way", () => {
    expect(finding.subject.id).toBe("F1");
    expect(finding.also).toContain("A19");
    expect(finding.limit?.value).toBe(11);
    expect(finding.numbers).toMatchObject({ wire: "A19", sumA: 35, lowSumA: 17.5 });
    expect(finding.message).toContain("fails either way");
  });

  test("offers a fuse that suits the wire, and wire that suits the fuse", () => {
    const suggested = finding.remedies.map(({ kind, newNumbers }) => [kind, newNumbers.suggestedA]);
    expect(suggested).toContainEqual(["wire-fuse", 10]);
    expect(finding.remedies.map(({ kind }) => kind)).toContain("larger-wire");
  });

  test("opens into working", () => {
    expect(finding.working.some(({ equation }) => equation.includes("(k S / I)^2"))).toBe(true);
  });
});

/**
 * The same machine with 1.0 mm2: the scenario reckons 55 A into a short at the tail lamp and (115 x 1.005)^2 / 55^2 = 4.4 s from
 * 70 to 160 C. That figure holds with nominal copper and every load off; the wire's published largest resistance is 7 % more.
 */
test("N01: a dead short at the tail, with 1.0 mm2", () => {
  const job = machine("a");
  const conductors = conductorsOf(job, routeJob(job));
  const operated = operateJob(job, conductors, {
    set: { LSW: "L" },
    short: [{ a: "REAR.TAIL", ohm: DEAD_SHORT_OHM }],
  });
  if (!operated.ok) throw new Error("refused");
  const wire = operated.solution.wires.find((one) => one.wire === "A19")!;
  expect(Math.abs(wire.currentA)).toBeGreaterThan(55 * 0.85);
  expect(Math.abs(wire.currentA)).toBeLessThan(55 * 1.05);
});
