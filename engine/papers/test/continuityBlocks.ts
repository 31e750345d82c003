import { type AreaMm, type Block, type TableColumn, tableBlocks } from "../../drawing/index.ts";
import type { TestRow } from "./testRow.ts";

const COLUMNS: readonly TableColumn[] = [
  { key: "number", heading: "No.", width: { kind: "natural", maxMm: 30 } },
  { key: "way", heading: "Way", width: { kind: "share", share: 1, minMm: 40 } },
  { key: "expected", heading: "Expected", width: { kind: "natural", maxMm: 26 }, align: "end" },
  { key: "limit", heading: "Most", width: { kind: "natural", maxMm: 24 }, align: "end" },
  { key: "read", heading: "Read", width: { kind: "fixed", mm: 18 }, align: "middle" },
  { key: "ok", heading: "ok", width: { kind: "fixed", mm: 9 }, align: "middle" },
];

/** Continuity of every wire: one line a wire, a box for the reading. */
export function continuityBlocks(rows: readonly TestRow[], content: AreaMm): readonly Block[] {
  return tableBlocks(
    {
      columns: COLUMNS,
      groups: [
        {
          heading: null,
          rows: rows.map(({ what, note, expected, limit }) => ({
            cells: {
              number: { kind: "wireNumber", text: what },
              way: note,
              expected,
              limit: limit.replace("most ", ""),
              read: { kind: "writeIn" },
              ok: { kind: "tick" },
            },
          })),
        },
      ],
    },
    content.widthMm,
    content.heightMm,
  );
}
