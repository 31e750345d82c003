import {
  BOARD_LIMITS_MM,
  BOARD_PRINT,
  type BoardPrint,
  boardPrintFaults,
  readingBehindMm,
} from "@copperwright/engine/words";
import type { PaperChoice } from "./papersAnswers.ts";

/** What a printer makes of a bar of 100 mm that is not corrected. */
export type PrinterReadings = Pick<BoardPrint, "readAcrossMm" | "readDownMm">;

/** How this device prints: its printers, its paper, the board on its wall. */
export interface PrintSettings {
  readonly paper: PaperChoice["paper"];
  readonly ink: PaperChoice["ink"];
  readonly boardWidthMm: number;
  readonly marginMm: number;
  readonly overlapMm: number;
  /** A board as sheets to glue, or whole on a roll. */
  readonly boardForm: "sheets" | "roll";
  /** Name of the printer the boards are corrected for; null: not corrected. */
  readonly printer: string | null;
  readonly printers: Readonly<Record<string, PrinterReadings>>;
  /** The shopping list is priced where a shop's list is known. */
  readonly hasPrices: boolean;
}

export const USUAL_SETTINGS: PrintSettings = {
  paper: "a4",
  ink: "colour",
  boardWidthMm: BOARD_PRINT.boardWidthMm,
  marginMm: BOARD_PRINT.marginMm,
  overlapMm: BOARD_PRINT.overlapMm,
  boardForm: "sheets",
  printer: null,
  printers: {},
  hasPrices: true,
};

/** The settings as the engine is asked for papers. */
export function choiceOf(
  settings: PrintSettings,
  stockText: string | null,
  issue: PaperChoice["issue"] = null,
): PaperChoice {
  const { paper, ink, boardWidthMm, marginMm, overlapMm, printer, printers } = settings;
  const { readAcrossMm, readDownMm } = (printer !== null && printers[printer]) || BOARD_PRINT;
  return {
    paper,
    ink,
    board: { boardWidthMm, marginMm, overlapMm, readAcrossMm, readDownMm },
    stockText: settings.hasPrices ? stockText : null,
    issue,
  };
}

export type ReadingsTaken =
  | { readonly ok: true; readonly readings: PrinterReadings }
  | { readonly ok: false; readonly message: string };

/**
 * What is to be kept of a printer after its bar was measured.
 *
 * @param correctedBy  the readings the measured sheet was corrected by already; null: it was not
 */
export function takenReadings(
  measured: PrinterReadings,
  correctedBy: PrinterReadings | null,
): ReadingsTaken {
  const readings = {
    readAcrossMm: readingBehindMm(correctedBy?.readAcrossMm ?? 100, measured.readAcrossMm),
    readDownMm: readingBehindMm(correctedBy?.readDownMm ?? 100, measured.readDownMm),
  };
  if (boardPrintFaults(readings).length === 0) return { ok: true, readings };
  const { least, most } = BOARD_LIMITS_MM.readAcrossMm;
  return {
    ok: false,
    message: `A printer that makes less than ${least} or more than ${most} mm of 100 mm has fitted the page. Print a sheet that is not corrected at 100 %, and measure that.`,
  };
}

/** What the device kept, as far as it can be used; anything else is as usual. */
export function readSettings(text: string | null): PrintSettings {
  const kept = parsed(text);
  const one = <T>(value: unknown, choices: readonly T[], usual: T): T =>
    choices.includes(value as T) ? (value as T) : usual;
  const mm = (field: "boardWidthMm" | "marginMm" | "overlapMm"): number => {
    const found = kept[field];
    const isSound = typeof found === "number" && boardPrintFaults({ [field]: found }).length === 0;
    return isSound ? found : USUAL_SETTINGS[field];
  };
  const printers = printersOf(kept.printers);
  const { printer } = kept;
  return {
    paper: one(kept.paper, ["a4", "a3", "letter"] as const, "a4"),
    ink: one(kept.ink, ["colour", "black"] as const, "colour"),
    boardWidthMm: mm("boardWidthMm"),
    marginMm: mm("marginMm"),
    overlapMm: mm("overlapMm"),
    boardForm: one(kept.boardForm, ["sheets", "roll"] as const, "sheets"),
    printer: typeof printer === "string" && Object.hasOwn(printers, printer) ? printer : null,
    printers,
    hasPrices: kept.hasPrices !== false,
  };
}

function parsed(text: string | null): Readonly<Record<string, unknown>> {
  try {
    const read: unknown = JSON.parse(text ?? "{}");
    return typeof read === "object" && read !== null ? (read as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}

const printersOf = (kept: unknown): Readonly<Record<string, PrinterReadings>> =>
  Object.fromEntries(
    Object.entries(typeof kept === "object" && kept !== null ? kept : {}).flatMap(
      ([name, one]: [string, Partial<PrinterReadings> | null]) => {
        const { readAcrossMm, readDownMm } = one ?? {};
        const isSound =
          typeof readAcrossMm === "number" &&
          typeof readDownMm === "number" &&
          boardPrintFaults({ readAcrossMm, readDownMm }).length === 0;
        return isSound ? [[name, { readAcrossMm, readDownMm }] as const] : [];
      },
    ),
  );
