import type { Confidence, Figure } from "../messages/index.ts";
import { allTables } from "./allTables.generated.ts";

export type { Confidence, Figure } from "../messages/index.ts";

export type TableName = keyof typeof allTables;
export type FigureColumn<T extends TableName> = keyof (typeof allTables)[T]["units"] & string;

/**
 * Looks one figure up, with its source.
 *
 * A column may bring its own `<column>Source`, `<column>Place` and `<column>Confidence`; where it
 * does not, the row's stand for it.
 *
 * @param table   name of the table, that is of its CSV file.
 * @param id      row id.
 * @param column  heading of the figure wanted.
 * @throws  Error where the row is not there or the figure is not known: ask `figureOrNull` first.
 */
export function figure<T extends TableName>(table: T, id: string, column: FigureColumn<T>): Figure {
  const found = figureOrNull(table, id, column);
  if (found === null) throw new Error(`table ${table}, row ${id}: ${column} is not known`);
  return found;
}

/** As `figure`, but null where the table says the figure is not known. */
export function figureOrNull<T extends TableName>(
  table: T,
  id: string,
  column: FigureColumn<T>,
): Figure | null {
  const row = rowOf(table, id);
  const value = row[column];
  if (typeof value !== "number") return null;
  const units: Readonly<Record<string, string | null>> = allTables[table].units;
  const own = OWN_COLUMNS.get(column)!;
  return {
    value,
    unit: units[column] ?? String(row.unit),
    table,
    row: id,
    source: String(row[own.source] ?? row.source),
    place: String(row[own.place] ?? row.place),
    confidence: String(row[own.confidence] ?? row.confidence) as Confidence,
  };
}

type Row = Readonly<Record<string, unknown>>;

/** Every row by its table and id, and the columns a column of figures may bring of its own: asked for thousands of times a check. */
const ROWS: ReadonlyMap<string, ReadonlyMap<string, Row>> = new Map(
  Object.entries(allTables).map(([table, { rows }]) => {
    const first = new Map<string, Row>();
    for (const row of rows) if (!first.has(row.id)) first.set(row.id, { ...row });
    return [table, first];
  }),
);
const OWN_COLUMNS = new Map(
  Object.values(allTables)
    .flatMap(({ units }) => Object.keys(units))
    .map((column) => [
      column,
      {
        source: `${column}Source`,
        place: `${column}Place`,
        confidence: `${column}Confidence`,
      },
    ]),
);

/** True where any of the figures is only remembered: such a result clears nothing by itself. */
export const leansOnMemory = (figures: readonly Figure[]): boolean =>
  figures.some((one) => one.confidence === "memory");

function rowOf(table: TableName, id: string): Row {
  const row = ROWS.get(table)?.get(id);
  if (row === undefined) throw new Error(`table ${table} has no row ${id}`);
  return row;
}
