import type { CircuitColumn, ColumnEnd, ColumnStart } from "./circuitSheetInput.ts";

/** A way to another column that is told in words instead of drawn. */
export interface Words {
  readonly kind: "words";
  readonly column: string;
  /** Null: to the column as a whole, where one goes on in another. */
  readonly joint: string | null;
  /** What lies there: "J3", "wire 31". */
  readonly what: string;
}

/** A column while columns are being fitted. */
export interface FittingColumn extends Omit<CircuitColumn, "start" | "end"> {
  readonly start: ColumnStart | Words;
  readonly end: ColumnEnd | Words;
}

/** "to J3, column 2". */
export const wordsText = ({ what }: Words, way: "from" | "to", number: string): string =>
  `${way} ${what === "" ? "" : `${what}, `}column\u00A0${number}`;

/** Columns numbered from 1 at the left, with words in place of the ways that are not drawn. */
export function wordedColumns(columns: readonly FittingColumn[]): CircuitColumn[] {
  const numbers = new Map(columns.map(({ id }, i) => [id, i + 1]));
  return columns.map((column) => {
    const { start, end } = column;
    return {
      ...column,
      start:
        start.kind === "words"
          ? {
              kind: "reference",
              label: wordsText(start, "from", String(numbers.get(start.column))),
            }
          : start,
      end:
        end.kind === "words"
          ? { kind: "reference", label: wordsText(end, "to", String(numbers.get(end.column))) }
          : end,
    };
  });
}

/** What to write at each joint, by `column joint`: numbers of the columns that part or come back there in words. */
export function jointNotes(
  columns: readonly FittingColumn[],
): ReadonlyMap<string, readonly number[]> {
  const notes = new Map<string, number[]>();
  columns.forEach(({ start, end }, i) => {
    for (const way of [start, end]) {
      if (way.kind !== "words" || way.joint === null) continue;
      const key = `${way.column} ${way.joint}`;
      notes.set(key, [...(notes.get(key) ?? []), i + 1]);
    }
  });
  return notes;
}
