import type { Table, TableCell, TableColumn, TableGroup, TableRow } from "../drawing/index.ts";

const GAP_MM = 5;

/** A narrow table set twice beside itself: rows are read across, left then right. */
export function twoUp(columns: readonly TableColumn[], groups: readonly TableGroup[]): Table {
  const sided = (side: string): readonly TableColumn[] =>
    columns.map((column) => ({ ...column, key: `${side} ${column.key}` }));
  const gap: TableColumn = { key: "gap", heading: "", width: { kind: "fixed", mm: GAP_MM } };
  return {
    columns: [...sided("left"), gap, ...sided("right")],
    groups: groups.map((group) => ({ ...group, rows: pairs(group.rows) })),
  };
}

function pairs(rows: readonly TableRow[]): readonly TableRow[] {
  const joined: TableRow[] = [];
  for (let i = 0; i < rows.length; i += 2) {
    joined.push({
      id: rows[i]!.id,
      cells: { ...named("left", rows[i]), ...named("right", rows[i + 1]) },
    });
  }
  return joined;
}

const named = (side: string, row: TableRow | undefined): Readonly<Record<string, TableCell>> =>
  Object.fromEntries(
    Object.entries(row?.cells ?? {}).map(([key, cell]) => [`${side} ${key}`, cell]),
  );
