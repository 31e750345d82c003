import type { CsvValue, TableColumn, TableGroup, TableRow } from "../../drawing/index.ts";

/** One thing to measure or look at: what, what is expected, within what, and a box for the reading. */
export interface TestRow {
  readonly section: string;
  /** Under which heading of its section; empty: none. */
  readonly group: string;
  readonly what: string;
  readonly note: string;
  readonly expected: string;
  readonly limit: string;
  /** True: a reading is written in. False: a tick alone. */
  readonly isRead: boolean;
  /** Full precision, for the spreadsheet. */
  readonly expectedValue: number | null;
  readonly unit: string;
  /** A reading must not be under this, in `unit`; absent: no lower limit. */
  readonly least?: number | undefined;
  /** Nor over this. */
  readonly most?: number | undefined;
}

export const TEST_COLUMNS: readonly TableColumn[] = [
  { key: "what", heading: "What", width: { kind: "share", share: 1, minMm: 50 } },
  {
    key: "expected",
    heading: "Expected",
    width: { kind: "natural", maxMm: 30 },
    align: "end",
    weight: 700,
  },
  { key: "limit", heading: "Limit", width: { kind: "natural", maxMm: 42 } },
  { key: "read", heading: "Read", width: { kind: "fixed", mm: 24 }, align: "middle" },
  { key: "ok", heading: "ok", width: { kind: "fixed", mm: 9 }, align: "middle" },
];

/** Rows of one section as groups of a table. */
export function testGroups(rows: readonly TestRow[]): readonly TableGroup[] {
  const groups = new Map<string, TableRow[]>();
  for (const row of rows) groups.set(row.group, [...(groups.get(row.group) ?? []), tableRow(row)]);
  return [...groups].map(([heading, list]) => ({ heading: heading || null, rows: list }));
}

const tableRow = ({ what, note, expected, limit, isRead }: TestRow): TableRow => ({
  cells: {
    what: note === "" ? what : { kind: "text", text: what, note },
    expected,
    limit,
    read: isRead ? { kind: "writeIn" } : null,
    ok: { kind: "tick" },
  },
});

export const TEST_HEADINGS: readonly CsvValue[] = [
  "section",
  "group",
  "what",
  "note",
  "expected",
  "unit",
  "expectedText",
  "limit",
  "read",
  "ok",
];

export const testCsvRow = (row: TestRow): readonly CsvValue[] => [
  row.section,
  row.group,
  row.what,
  row.note,
  row.expectedValue,
  row.unit,
  plain(row.expected),
  plain(row.limit),
  null,
  null,
];

/** Spaces that only matter on paper. */
const plain = (text: string): string => text.replace(/[\u00a0\u2009]/g, " ");
