import type { Table, TableColumn } from "./table.ts";
import { naturalWidthMm } from "./tableCell.ts";

/**
 * Widths of a table's columns: fixed and natural ones first, the rest shared out.
 *
 * @throws  where the columns cannot fit the width at all: the table was designed for wider paper
 */
export function columnWidthsMm(table: Table, widthMm: number): number[] {
  const rows = table.groups.flatMap((group) => group.rows);
  const natural = (column: TableColumn): number =>
    Math.max(
      naturalWidthMm(column.heading, { ...column, weight: 700 }),
      ...rows.map((row) => naturalWidthMm(row.cells[column.key] ?? null, column)),
    );
  const fixedMm = table.columns.map(({ width }, i) => {
    if (width.kind === "fixed") return width.mm;
    return width.kind === "natural" ? Math.min(width.maxMm, natural(table.columns[i]!)) : 0;
  });
  const leftMm = widthMm - fixedMm.reduce((sumMm, each) => sumMm + each, 0);
  const sharing = table.columns.map(({ width }) => (width.kind === "share" ? width : null));
  const leastMm = sharing.reduce((sumMm, each) => sumMm + (each?.minMm ?? 0), 0);
  if (leastMm > leftMm + 1e-6) {
    throw new Error(
      `a table needs ${(widthMm - leftMm + leastMm).toFixed(1)} mm, there are ${widthMm.toFixed(1)}`,
    );
  }
  const shareSum = sharing.reduce((sum, each) => sum + (each?.share ?? 0), 0);
  const spareMm = leftMm - leastMm;
  return fixedMm.map((mm, i) => {
    const each = sharing[i];
    return each ? each.minMm + (spareMm * each.share) / shareSum : mm;
  });
}
