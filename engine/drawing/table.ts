import type { Severity } from "../messages/index.ts";
import type { FontWeight } from "./paperFonts.ts";
import type { WireColours } from "./scene.ts";

/** How wide a column is: a fixed width, a share of what is left (never under a least width), or as wide as its widest cell up to a limit. */
export type ColumnWidth =
  | { readonly kind: "fixed"; readonly mm: number }
  | { readonly kind: "share"; readonly share: number; readonly minMm: number }
  | { readonly kind: "natural"; readonly maxMm: number };

export interface TableColumn {
  readonly key: string;
  readonly heading: string;
  readonly width: ColumnWidth;
  /** Absent: start. Figures stand at the end. */
  readonly align?: "start" | "middle" | "end" | undefined;
  /** Absent: 400. */
  readonly weight?: FontWeight | undefined;
}

export type TableCell =
  | string
  | null
  /** Text with a smaller line under it. */
  | {
      readonly kind: "text";
      readonly text: string;
      readonly weight?: FontWeight | undefined;
      readonly note?: string | undefined;
    }
  /** 5 mm figures, to be found from arm's length. */
  | { readonly kind: "wireNumber"; readonly text: string }
  /** A piece of the wire, then code and word: colour is never told by colour alone. */
  | {
      readonly kind: "wire";
      readonly colours: WireColours | null;
      readonly areaMm2: number | null;
      readonly code: string;
      readonly word: string;
    }
  /** A box for the pencil; `done` ticks it. */
  | { readonly kind: "tick"; readonly done?: boolean | undefined }
  /** A box to write a reading into. */
  | { readonly kind: "writeIn" }
  | { readonly kind: "severity"; readonly severity: Severity };

export interface TableRow {
  /** Permanent id in the job of what the row is about. */
  readonly id?: string | undefined;
  readonly cells: Readonly<Record<string, TableCell>>;
}

/** Rows under a heading of their own; one group without a heading is a plain table. */
export interface TableGroup {
  readonly heading: string | null;
  /** At the right end of the heading: totals. */
  readonly headingNote?: string | undefined;
  readonly rows: readonly TableRow[];
}

export interface Table {
  readonly columns: readonly TableColumn[];
  readonly groups: readonly TableGroup[];
}
