/** What a build is made of, as a shop would sort it. */
export const GOOD_KINDS = ["wire", "terminal", "splice", "connector", "fuse", "part"] as const;
export type GoodKind = (typeof GOOD_KINDS)[number];

/** `each`: pieces. `m`: cut to length in one piece. `reel`: a length that is not joined to the next. */
export type StockUnit = "each" | "m" | "reel";

/** One thing a shop sells. */
export interface StockRow {
  readonly line: number;
  readonly code: string;
  readonly description: string;
  readonly kind: GoodKind;
  /** What the shopping list calls it: `thin-1.0`, `blade-6.3`, `blade-10`. */
  readonly make: string;
  /** Colour words with strokes between, `red/black`; null: it will do for every colour. */
  readonly colour: string | null;
  readonly unit: StockUnit;
  /** Pieces in a pack; null for wire. */
  readonly packCount: number | null;
  /** Metres on a reel, or the step a length is cut in; null for pieces. */
  readonly packM: number | null;
  /** Of one pack. */
  readonly packPrice: number;
  /** Packs on the shelf; null where nobody said. */
  readonly inStockCount: number | null;
}

/** A row that can serve no list of this program, and why. */
export interface PassedOver {
  readonly line: number;
  readonly code: string;
  readonly why: "kind" | "make";
}

/** A shop's price list. */
export interface StockList {
  readonly currency: string;
  readonly rows: readonly StockRow[];
  /** Rows of other trades, or without a make. */
  readonly passedOver: readonly PassedOver[];
  /** Headings nothing is read from. */
  readonly unusedHeadings: readonly string[];
}
