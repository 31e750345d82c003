import type { Job } from "../../job/index.ts";
import { type SceneAsked, sourceOf } from "../scenes/sceneSource.ts";
import type { TestRow } from "./testRow.ts";

type Record = Job["tests"][number];

/** The test sheet for a screen: every row with where its reading is kept and what was read last. */
export interface TestSheetSection {
  readonly heading: string;
  readonly lead: string;
  readonly rows: readonly TestSheetRow[];
}

export interface TestSheetRow extends TestRow {
  /** `test` and `subject` of its record in the job: the same row after an edit has the same. A row to tick is recorded in `build` as "tested". */
  readonly test: string;
  readonly subject: string;
  readonly last: Pick<Record, "id" | "by" | "date"> | null;
  /** What was read last, in `unit` of the row. */
  readonly readValue: number | null;
  readonly verdict: TestVerdict;
}

/** `seen`: a tick or a reading without a limit. */
export type TestVerdict = "open" | "good" | "outside" | "seen";

const SUBJECT_LETTERS = 140;
/** A tick is a build record, whose subject is shorter. */
const TICK_LETTERS = 70;

/** Every test of the finished loom in its order, with what is expected and what has been read. */
export function testSheetOf(asked: SceneAsked): readonly TestSheetSection[] {
  const source = sourceOf(asked);
  const met = new Map<string, number>();
  /** A row that another stands before under the same words gets a number after them. */
  const wordsOf = (row: TestRow): string => {
    const state = row.group.split(":")[0] ?? "";
    const words = state === "" ? row.what : `${state}: ${row.what}`;
    const key = `${row.section} ${words}`;
    const countBefore = met.get(key) ?? 0;
    met.set(key, countBefore + 1);
    return countBefore === 0 ? words : `${words} ${countBefore + 1}`;
  };
  return source
    .tests()
    .filter(({ rows }) => rows.length > 0)
    .map(({ heading, lead, rows }) => ({
      heading,
      lead,
      rows: rows.map((row) => sheetRow(row, wordsOf(row), source.input.job)),
    }));
}

function sheetRow(row: TestRow, whole: string, job: Job): TestSheetRow {
  if (!row.isRead) {
    const subject = whole.slice(0, TICK_LETTERS);
    const last = job.build.find((one) => one.done === "tested" && one.subject === subject) ?? null;
    const verdict = last === null ? "open" : "seen";
    return { ...row, test: row.section, subject, last, readValue: null, verdict };
  }
  const subject = whole.slice(0, SUBJECT_LETTERS);
  const found = job.tests.filter((one) => one.test === row.section && one.subject === subject);
  const last = found.at(-1) ?? null;
  const readValue = last === null ? null : inRowUnit(row.unit, last);
  const verdict = readValue === null ? "open" : verdictOn(row, readValue);
  return { ...row, test: row.section, subject, last, readValue, verdict };
}

function verdictOn({ least, most }: TestRow, readValue: number): TestVerdict {
  if (least === undefined && most === undefined) return "seen";
  const isLow = least !== undefined && readValue < least;
  const isHigh = most !== undefined && readValue > most;
  return isLow || isHigh ? "outside" : "good";
}

/** What a reading in the unit of its row is in the unit records are kept in. */
export function recordedReading(
  rowUnit: string,
  read: number,
): { readonly read: number; readonly unit: Record["unit"] } {
  const unit = RECORD_UNITS[rowUnit] ?? "V";
  if (rowUnit === "mA") return { read: read / MILLI_PER_ONE, unit };
  return { read: rowUnit === "Mohm" ? read * ONE_PER_MEGA : read, unit };
}

const MILLI_PER_ONE = 1000;
const ONE_PER_MEGA = 1_000_000;

const RECORD_UNITS: Readonly<{ [unit: string]: Record["unit"] }> = {
  V: "V",
  A: "A",
  mA: "A",
  ohm: "ohm",
  Mohm: "ohm",
  rpm: "rpm",
};

function inRowUnit(rowUnit: string, { read, unit }: Pick<Record, "read" | "unit">): number {
  if (rowUnit === "mA" && unit === "A") return read * MILLI_PER_ONE;
  return rowUnit === "Mohm" && unit === "ohm" ? read / ONE_PER_MEGA : read;
}
