import type { GoodKind } from "./stockRow.ts";

/** One line of what has to be bought. */
export interface Good {
  readonly kind: GoodKind;
  /** What a row's `make` may say to serve it, the most exact first. */
  readonly makes: readonly string[];
  /** Colour words with strokes between; null: colour does not matter. */
  readonly colour: string | null;
  /** As the shopping list has it. */
  readonly group: string;
  readonly what: string;
  readonly quantity: string;
  readonly note: string;
  /** Pieces to buy, spares included; null for wire. */
  readonly neededCount: number | null;
  /** Wire: what is cut, m each, longest first, waste included; empty for anything else. */
  readonly piecesM: readonly number[];
  /** Wires nobody knows the length of. */
  readonly unmeasured: readonly string[];
}
