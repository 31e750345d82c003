import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Job, readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { recordedReading, type TestSheetRow, testSheetOf } from "./testSheet.ts";

const read = readJob(readFileSync("demos/aldreth-single.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const demo = read.job;

const rowsOf = (job: Job): readonly TestSheetRow[] =>
  testSheetOf(checkedJob(job)).flatMap(({ rows }) => rows);

/** The sheet once a reading of one row has been taken. */
function after(row: TestSheetRow, value: number): TestSheetRow {
  const { read: inRecord, unit } = recordedReading(row.unit, value);
  const record = { id: "T1", test: row.test, subject: row.subject, read: inRecord, unit };
  const job: Job = { ...demo, tests: [{ ...record, by: "tester", date: "2026-01-02" }] };
  return rowsOf(job).find(({ test, subject }) => test === row.test && subject === row.subject)!;
}

describe("the test sheet on a screen", () => {
  const rows = rowsOf(demo);

  test("names every row so that its record finds it again", () => {
    const names = rows.map(({ test, subject }) => `${test} ${subject}`);
    expect(new Set(names).size).toBe(names.length);
    expect(rows.every(({ verdict }) => verdict === "open")).toBe(true);
  });

  test("holds a reading against both limits of its row", () => {
    const limited = rows.filter(
      ({ isRead, least, most }) => isRead && (least ?? most) !== undefined,
    );
    expect(limited.length).toBeGreaterThan(40);
    const most = limited.find((row) => row.most !== undefined && row.section === "continuity")!;
    expect(after(most, most.most! * 0.9).verdict).toBe("good");
    expect(after(most, most.most! * 1.1).verdict).toBe("outside");
    const least = limited.find((row) => row.least !== undefined && row.section === "states")!;
    expect(after(least, least.least! * 0.99).verdict).toBe("outside");
  });

  test("keeps milliamps as amps and shows them as milliamps again", () => {
    const drain = rows.find(({ unit }) => unit === "mA")!;
    expect(recordedReading("mA", 12)).toEqual({ read: 0.012, unit: "A" });
    expect(after(drain, 12).readValue).toBeCloseTo(12, 12);
  });
});
