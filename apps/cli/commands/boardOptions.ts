import { printNumber, type Refusal } from "@copperwright/engine";
import {
  BOARD_LIMITS_MM,
  type BoardPrint,
  boardPrintFaults,
  readingBehindMm,
} from "@copperwright/engine/paper";
import { type PrinterReadings, type Printers, readPrinters } from "../printers.ts";
import { argumentRefusal } from "../refuse.ts";
import type { World } from "../world.ts";

export { BOARD_PRINT } from "@copperwright/engine/paper";

/** Options of `pack` that say how full-size boards are printed. */
export interface BoardOptions {
  readonly boardWidth?: string;
  readonly margin?: string;
  readonly overlap?: string;
  readonly printer?: string;
  readonly barAcross?: string;
  readonly barDown?: string;
  readonly anew?: boolean;
}

export interface BoardWanted {
  readonly board: Partial<Omit<BoardPrint, "paper">>;
  /** Printers with what was read now; null where nothing is to be kept. */
  readonly keep: Printers | null;
}

const FIELDS = {
  boardWidthMm: ["boardWidth", "--board-width"],
  marginMm: ["margin", "--margin"],
  overlapMm: ["overlap", "--overlap"],
  readAcrossMm: ["barAcross", "--bar-across"],
  readDownMm: ["barDown", "--bar-down"],
} as const;

type Field = keyof typeof FIELDS;

/**
 * How the boards are to be printed. A printer's two readings are kept under its name; where some are kept already, new ones were measured on a sheet that
 * was corrected by them.
 */
export function boardOptions(
  world: World,
  options: BoardOptions,
): { ok: true; wanted: BoardWanted } | { ok: false; refusals: readonly Refusal[] } {
  const given = readFields(options);
  const refusals = [...given.refusals, ...readingRefusals(options)];
  const kept = options.printer === undefined ? null : readPrinters(world);
  if (kept !== null && !kept.ok) return { ok: false, refusals: [...refusals, kept.refusal] };
  if (refusals.length > 0) return { ok: false, refusals };
  if (kept === null || options.printer === undefined) {
    return { ok: true, wanted: { board: given.board, keep: null } };
  }
  return withPrinter(options.printer, options, given.board, kept.printers);
}

function withPrinter(
  name: string,
  { anew = false }: BoardOptions,
  board: BoardWanted["board"],
  printers: Printers,
): ReturnType<typeof boardOptions> {
  const before = Object.hasOwn(printers, name) && !anew ? printers[name]! : null;
  const { readAcrossMm, readDownMm } = board;
  if (readAcrossMm === undefined || readDownMm === undefined) {
    if (before === null) return { ok: false, refusals: [unknownPrinter(name, printers)] };
    return { ok: true, wanted: { board: { ...board, ...before }, keep: null } };
  }
  const readings: PrinterReadings = {
    readAcrossMm: readingBehindMm(before?.readAcrossMm ?? 100, readAcrossMm),
    readDownMm: readingBehindMm(before?.readDownMm ?? 100, readDownMm),
  };
  const refusals = faultRefusals(readings);
  if (refusals.length > 0) return { ok: false, refusals };
  const keep = { ...printers, [name]: readings };
  return { ok: true, wanted: { board: { ...board, ...readings }, keep } };
}

/** Numbers in millimetres, with or without the unit. */
function readFields(options: BoardOptions): {
  board: BoardWanted["board"];
  refusals: readonly Refusal[];
} {
  const board: Partial<Record<Field, number>> = {};
  const refusals: Refusal[] = [];
  for (const [field, [name]] of Object.entries(FIELDS) as [Field, (typeof FIELDS)[Field]][]) {
    const text = options[name];
    if (text === undefined) continue;
    const digits = text
      .trim()
      .replace(/\s*mm$/i, "")
      .replace(",", ".");
    const value = /^\d+(\.\d+)?$/.test(digits) ? Number(digits) : Number.NaN;
    if (Number.isFinite(value)) board[field] = value;
    else refusals.push(outside(field, text));
  }
  return { board, refusals: [...refusals, ...faultRefusals(board)] };
}

const faultRefusals = (board: Partial<BoardPrint>): readonly Refusal[] =>
  boardPrintFaults(board).map(({ field, foundMm }) => outside(field, printNumber(foundMm, 2)));

function outside(field: Field, found: string): Refusal {
  const [, option] = FIELDS[field];
  const { least, most } = BOARD_LIMITS_MM[field];
  const isReading = field === "readAcrossMm" || field === "readDownMm";
  return argumentRefusal(
    option,
    found,
    isReading
      ? `That is no reading of the 100 mm bar: it must lie between ${least} and ${most} mm.`
      : `${option} wants millimetres between ${least} and ${most}.`,
    isReading
      ? "Print at 100 %, without fitting to the page, and measure the bar again from end to end."
      : `Write ${option} with a number of millimetres, such as ${option} ${Math.max(least, 10)}.`,
  );
}

/** Both readings or none, and only for a printer with a name. */
function readingRefusals({ printer, barAcross, barDown, anew }: BoardOptions): readonly Refusal[] {
  const isHalf = (barAcross === undefined) !== (barDown === undefined);
  const [absent, found] =
    barAcross === undefined ? ["--bar-across", barDown] : ["--bar-down", barAcross];
  if (isHalf) {
    return [
      argumentRefusal(
        absent!,
        found!,
        "A printer may stretch one way only, so the bar is measured both ways.",
        "Give --bar-across and --bar-down.",
      ),
    ];
  }
  if ((barAcross !== undefined || anew === true) && printer === undefined) {
    return [
      argumentRefusal(
        "--printer",
        "",
        "Readings belong to one printer.",
        "Give the printer a name of your own: --printer garage.",
      ),
    ];
  }
  return [];
}

function unknownPrinter(name: string, printers: Printers): Refusal {
  const known = Object.keys(printers);
  return argumentRefusal(
    "--printer",
    name,
    `No readings are kept for this printer${known.length === 0 ? "" : `; kept are: ${known.join(", ")}`}.`,
    "Print one tile of a pack made without --printer, measure the bar both ways, then give --bar-across and --bar-down with the name.",
  );
}
