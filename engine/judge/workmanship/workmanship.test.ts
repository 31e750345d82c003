import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { type Job, readJob } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { messageOf } from "../../messages/index.ts";
import { buildDesign } from "../buildDesign.ts";
import { planJob } from "../planJob.ts";
import { workmanshipJudges } from "./index.ts";
import { terminalRating } from "./terminalRating.ts";

function jobAt(path: string): Job {
  const read = readJob(readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8"));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return read.job;
}

function findingsOf(job: Job): readonly Finding[] {
  const design = buildDesign(planJob(job));
  return workmanshipJudges.flatMap((judge) => judge(design));
}

const one = (findings: readonly Finding[], code: string): Finding => {
  const found = findings.filter((finding) => finding.code === code);
  expect(found).toHaveLength(1);
  return found[0]!;
};

describe("what the reference machines leave wrong", () => {
  // cases/reference-machines/README.md: "Joints nobody crimps".
  test.each([
    ["c", ["J2", "J7", "JT"]],
    ["d", ["J1", "J7"]],
    ["e", ["J15", "J30", "J31F", "J31U", "JIE", "JTL"]],
  ])("%s: splices of more than four wires are named, all in one finding", (machine, joints) => {
    const { subject, also, severity } = one(
      findingsOf(jobAt(`cases/reference-machines/${machine}/job.json`)),
      "joint-ways",
    );
    expect([subject.id, ...also].sort()).toEqual(joints);
    expect(severity).toBe("mend");
  });

  test("the buildable counterparts have none", () => {
    for (const demo of ["minazuru-four", "orivesta-enduro", "brenzach-twin", "aldreth-single"]) {
      const codes = findingsOf(jobAt(`demos/${demo}.json`)).map(({ code }) => code);
      expect(codes).not.toContain("joint-ways");
      expect(codes).not.toContain("joint-crowded");
      expect(codes).not.toContain("joint-in-flex");
    }
  });

  // The same page: "plain yellow on three nets that have nothing to do with each other".
  test("d: plain yellow is told of once, with a wire of each of the three nets", () => {
    const { subject, also } = one(
      findingsOf(jobAt("cases/reference-machines/d/job.json")),
      "colour-several-jobs",
    );
    expect([subject.id, ...also].sort()).toEqual(["D08", "D41", "D45"]);
  });
});

describe("odd jobs", () => {
  const accessory = jobAt("demos/accessory-five-wires.json");
  const empty: Job = {
    ...accessory,
    parts: [],
    wires: [],
    bodies: [],
    bonds: [],
    circuits: [],
    looms: [],
    intents: [],
    states: [],
  };

  test("no stations, no scheme, nothing at all: no throw, every message whole", () => {
    const noScheme: Job = { ...accessory, colours: { ...accessory.colours, scheme: "none" } };
    for (const job of [accessory, noScheme, empty]) {
      for (const finding of findingsOf(job)) expect(messageOf(finding)).not.toMatch(/%|undefined/);
    }
    expect(findingsOf(empty)).toEqual([]);
  });

  test("a battery and a joint nobody placed", () => {
    const job: Job = {
      ...accessory,
      joints: [{ id: "J", kind: "crimped-splice", ways: ["1", "2"] }],
      connectors: [{ id: "X", name: "x", kind: "block-2.8", cavities: ["1"] }],
    };
    expect(findingsOf(job).map(({ code }) => code)).toContain("joint-one-wire");
  });
});

describe("laws", () => {
  const marred = jobAt("cases/reference-machines/a/job.json");
  const told = (job: Job) =>
    findingsOf(job)
      .map(({ code, severity, subject, also }) =>
        [code, severity, ...[subject.id, ...also].sort()].join(" "),
      )
      .sort();

  test("the order of the lists in the document changes nothing", () => {
    const plain = told(marred);
    const shuffled = fc.tuple(
      fc.shuffledSubarray([...marred.wires], { minLength: marred.wires.length }),
      fc.shuffledSubarray([...marred.parts], { minLength: marred.parts.length }),
      fc.shuffledSubarray([...marred.joints], { minLength: marred.joints.length }),
    );
    fc.assert(
      fc.property(shuffled, ([wires, parts, joints]) => {
        expect(told({ ...marred, wires, parts, joints })).toEqual(plain);
      }),
      { numRuns: 6 },
    );
  });

  test("a twisted joint cannot be accepted, everything else can", () => {
    const job: Job = {
      ...marred,
      joints: marred.joints.map((joint) => ({ ...joint, kind: "twisted" as const })),
    };
    const findings = findingsOf(job);
    expect(findings.filter(({ acceptable }) => !acceptable).map(({ code }) => code)).toEqual([
      "joint-twisted",
    ]);
  });
});

describe("current of a blade", () => {
  // UL 310 rows as printed in a terminal catalogue: 16 AWG (1.31 mm²) 10 A, 18 AWG (0.82 mm²) 7 A; 2.8 mm blade 18 AWG 4 A.
  test("is the table's on its rows", () => {
    expect(terminalRating("blade-6.3", 1.31)?.limit.value).toBe(10);
    expect(terminalRating("blade-4.8", 0.82)?.limit.value).toBe(7);
    expect(terminalRating("blade-2.8", 0.82)?.limit.value).toBe(4);
  });

  test("lies between its neighbours and rises with the copper", () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.32, max: 5.26, noNaN: true }),
        fc.double({ min: 0.32, max: 5.26, noNaN: true }),
        (a, b) => {
          const [less, more] = [Math.min(a, b), Math.max(a, b)];
          const currentA = (areaMm2: number) => terminalRating("blade-6.3", areaMm2)!.limit.value;
          expect(currentA(less)).toBeLessThanOrEqual(currentA(more) + 1e-9);
          expect(currentA(less)).toBeGreaterThanOrEqual(3);
          expect(currentA(more)).toBeLessThanOrEqual(24);
        },
      ),
    );
  });

  test("is not stretched beyond the table", () => {
    expect(terminalRating("blade-6.3", 6)).toBeNull();
    expect(terminalRating("blade-2.8", 2)).toBeNull();
    expect(terminalRating("ring-M6", 2)).toBeNull();
  });
});
