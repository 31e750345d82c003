import { readFileSync } from "node:fs";
import { applyOperation, checkedJob, type Job, readJob } from "@copperwright/engine";
import { describe, expect, test } from "vitest";
import { readTicks } from "./readTicks.ts";
import { takeAwayData } from "./takeAwayData.ts";
import { takeAwayHtml } from "./takeAwayHtml.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const demo: Job = read.job;

const file = (change: object = {}): string =>
  JSON.stringify({
    copperwrightTicks: 1,
    job: demo.id,
    revision: 1,
    fingerprint: "x",
    by: "rider",
    date: "2026-03-04",
    ticks: [{ subject: "W1", done: "cut" }],
    readings: [{ test: "drain", subject: "Everything off", unit: "mA", read: 4 }],
    ...change,
  });

describe("the take-away", () => {
  test("needs nothing from outside and lets no name become markup", () => {
    const evil: Job = {
      ...demo,
      name: '<script>alert("x")</script>',
      wires: demo.wires.map((wire) => ({ ...wire, number: "<b>" })),
    };
    const html = takeAwayHtml(takeAwayData(checkedJob(evil)));
    expect(html).not.toContain("<script>alert");
    expect(html).not.toContain("<b><b>");
    expect(html).toContain("&lt;b&gt;");
    expect(html).not.toMatch(/(?:src|href)="(?!#)/);
    expect(html.match(/<script/g)).toHaveLength(2);
  });

  test("hands its ticks and readings back as one operation that can be undone", () => {
    const taken = readTicks(demo, file());
    if (!taken.ok || taken.operation === null) throw new Error("should be taken");
    const done = applyOperation(demo, taken.operation);
    if (!done.ok) throw new Error("should apply");
    expect(done.job.build).toMatchObject([{ subject: "W1", done: "cut", by: "rider" }]);
    expect(done.job.tests).toMatchObject([{ read: 0.004, unit: "A" }]);
    const again = readTicks(done.job, file());
    expect(again).toMatchObject({ ok: true, operation: null, knownCount: 2 });
  });

  test("a new reading of the same row takes the place of the old one", () => {
    const first = readTicks(demo, file());
    if (!first.ok || first.operation === null) throw new Error("should be taken");
    const done = applyOperation(demo, first.operation);
    if (!done.ok) throw new Error("should apply");
    const newer = file({
      readings: [{ test: "drain", subject: "Everything off", unit: "mA", read: 9 }],
    });
    const second = readTicks(done.job, newer);
    if (!second.ok || second.operation === null) throw new Error("should be taken");
    const after = applyOperation(done.job, second.operation);
    expect(after.ok && after.job.tests.map(({ read: value }) => value)).toEqual([0.009]);
  });

  test.each([
    ["no JSON", "{"],
    ["another kind of file", JSON.stringify({ copperwrightJob: 1 })],
    ["another job's", file({ job: "other" })],
    ["a field too many", file({ extra: 1 })],
    ["a day that is none", file({ date: "2026-13-45" })],
    [
      "a number that is none",
      file({ readings: [{ test: "a", subject: "b", unit: "V", read: "1" }] }),
    ],
  ])("refuses %s", (_name, text) => {
    expect(readTicks(demo, text)).toMatchObject({ ok: false });
  });
});
