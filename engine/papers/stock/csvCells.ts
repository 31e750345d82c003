/** One line of a list: where it begins in the text, and its cells. */
export interface CsvLine {
  /** Counted from 1. */
  readonly line: number;
  readonly cells: readonly string[];
}

export type CsvReading =
  | { readonly ok: true; readonly lines: readonly CsvLine[] }
  | { readonly ok: false; readonly line: number };

const MARK = "\uFEFF";

/**
 * Comma or semicolon separated text (RFC 4180): cells in quotation marks may hold separators, line ends and doubled marks. The separator is
 * the one the first line holds outside quotation marks; both there: the semicolon, because decimal commas then stand in cells.
 *
 * @returns the line where a quotation mark is opened and not closed, or stands in a cell that does not begin with one.
 */
export function csvCells(text: string): CsvReading {
  const plain = text.startsWith(MARK) ? text.slice(1) : text;
  const separator = separatorOf(plain);
  const lines: CsvLine[] = [];
  let at = 0;
  let line = 1;
  while (at < plain.length) {
    const read = lineAt(plain, at, separator);
    if (read === null) return { ok: false, line };
    const isBlank = read.cells.every((cell) => cell === "");
    if (!isBlank) lines.push({ line, cells: read.cells });
    line += read.endCount;
    at = read.nextIndex;
  }
  return { ok: true, lines };
}

function separatorOf(text: string): "," | ";" {
  const first = /^[^\r\n]*/.exec(text)?.[0] ?? "";
  return first.replace(/"[^"]*"/g, "").includes(";") ? ";" : ",";
}

interface LineRead {
  readonly cells: readonly string[];
  /** Where the next line begins. */
  readonly nextIndex: number;
  /** Line ends passed, those inside cells included. */
  readonly endCount: number;
}

function lineAt(text: string, from: number, separator: string): LineRead | null {
  const cells: string[] = [];
  let at = from;
  let endCount = 0;
  for (;;) {
    const cell = text[at] === '"' ? quotedCell(text, at) : plainCell(text, at, separator);
    if (cell === null) return null;
    cells.push(cell.text.trim());
    endCount += cell.text.split("\n").length - 1;
    at = cell.nextIndex;
    if (text[at] === separator) {
      at += 1;
      continue;
    }
    if (text[at] === "\r") at += 1;
    if (text[at] === "\n") at += 1;
    else if (at < text.length && text[at - 1] !== "\r") return null;
    return { cells, nextIndex: at, endCount: endCount + 1 };
  }
}

interface CellRead {
  readonly text: string;
  readonly nextIndex: number;
}

function quotedCell(text: string, from: number): CellRead | null {
  let at = from + 1;
  let found = "";
  for (;;) {
    const close = text.indexOf('"', at);
    if (close < 0) return null;
    found += text.slice(at, close);
    if (text[close + 1] !== '"') return { text: found, nextIndex: close + 1 };
    found += '"';
    at = close + 2;
  }
}

function plainCell(text: string, from: number, separator: string): CellRead | null {
  let at = from;
  while (at < text.length && text[at] !== separator && text[at] !== "\n" && text[at] !== "\r") {
    if (text[at] === '"') return null;
    at += 1;
  }
  return { text: text.slice(from, at), nextIndex: at };
}
