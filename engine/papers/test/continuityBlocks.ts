import { type AreaMm, type Block, type TableColumn, tableBlocks } from "../../drawing/index.ts";
import { twoUp } from "../twoUp.ts";
import type { TestRow } from "./testRow.ts";

const COLUMNS: readonly TableColumn[] = [
  { key: "number", heading: "No.", width: { kind: "natural", maxMm: 26 } },
  { key: "way", heading: "Way", width: { kind: "share", share: 1, minMm: 18 } },
  { key: "limit", heading: "Most \u03a9", width: { kind: "fixed", mm: 12.5 }, align: "end" },
  { key: "read", heading: "Read", width: { kind: "fixed", mm: 15 }, align: "middle" },
  { key: "ok", heading: "ok", width: { kind: "fixed", mm: 7.5 }, align: "middle" },
];

/** Continuity of every wire, two beside each other: number, both ends, expected and most, a box for the reading. */
export function continuityBlocks(rows: readonly TestRow[], content: AreaMm): readonly Block[] {
  const cells = rows.map(({ what, note, expected, limit }) => ({
    cells: {
      number: { kind: "wireNumber" as const, text: what },
      way: { kind: "text" as const, text: note, note: expected === "" ? "" : `copper ${expected}` },
      limit: limit.replace("most ", "").replace("\u00a0\u03a9", ""),
      read: { kind: "writeIn" as const },
      ok: { kind: "tick" as const },
    },
  }));
  const table = twoUp(COLUMNS, [{ heading: null, rows: cells }]);
  return tableBlocks(table, content.widthMm, content.heightMm);
}
