import type { ColourToken } from "./colourToken.ts";
import type { FontWeight } from "./paperFonts.ts";
import type { SymbolName } from "./symbolName.ts";

/** Millimetres from the top left corner of the page: x to the right, y down. */
export interface PointMm {
  readonly xMm: number;
  readonly yMm: number;
}

/** A box on the page, by its top left corner. */
export interface AreaMm extends PointMm {
  readonly widthMm: number;
  readonly heightMm: number;
}

export interface Stroke {
  readonly widthMm: number;
  readonly colour: ColourToken;
  /** On, off, on, off …; absent: a full line. */
  readonly dashMm?: readonly number[] | undefined;
  /** How far into the dash pattern the line begins. */
  readonly dashOffsetMm?: number | undefined;
  /** Absent: butt. */
  readonly cap?: "butt" | "round" | undefined;
}

export interface Painted {
  readonly stroke?: Stroke | undefined;
  readonly fill?: ColourToken | undefined;
}

export interface LineMark {
  readonly kind: "line";
  readonly from: PointMm;
  readonly to: PointMm;
  readonly stroke: Stroke;
}

export interface PolylineMark extends Painted {
  readonly kind: "polyline";
  readonly points: readonly PointMm[];
  readonly closed?: boolean | undefined;
}

export type PathStep =
  | { readonly pen: "move" | "line"; readonly to: PointMm }
  | {
      readonly pen: "curve";
      readonly control1: PointMm;
      readonly control2: PointMm;
      readonly to: PointMm;
    }
  | { readonly pen: "close" };

export interface PathMark extends Painted {
  readonly kind: "path";
  readonly steps: readonly PathStep[];
}

export interface RectMark extends Painted {
  readonly kind: "rect";
  readonly area: AreaMm;
  readonly cornerMm?: number | undefined;
}

export interface CircleMark extends Painted {
  readonly kind: "circle";
  readonly centre: PointMm;
  readonly radiusMm: number;
}

/** One line of text; it never wraps by itself. */
export interface TextMark {
  readonly kind: "text";
  /** Where the base line meets the anchor. */
  readonly at: PointMm;
  readonly text: string;
  /** Height of a capital letter: the measure of lettering on a drawing. */
  readonly capHeightMm: number;
  readonly weight: FontWeight;
  readonly anchor: "start" | "middle" | "end";
  readonly colour: ColourToken;
  /** Clockwise about `at`; absent: level. */
  readonly turnDeg?: number | undefined;
  /** Clears the ground behind the letters, for text over lines. */
  readonly onGround?: boolean | undefined;
}

/** What an id on a mark is the id of. A pin is PART.PIN, a cavity CONNECTOR.CAVITYp or s, an earth point BODY.POINT. */
export type MarkSubject =
  | "wire"
  | "part"
  | "pin"
  | "joint"
  | "connector"
  | "body"
  | "station"
  | "run"
  | "peg";

/** Marks that show one thing. `id` is the permanent id in the job of what is drawn, `of` what it is the id of, `name` what it is called aloud. */
export interface GroupMark {
  readonly kind: "group";
  readonly id?: string | undefined;
  readonly of?: MarkSubject | undefined;
  readonly name?: string | undefined;
  readonly marks: readonly Mark[];
}

/** Colours of one wire as words: `{ main: "brown", tracer: "blue" }`. */
export interface WireColours {
  readonly main: string;
  readonly tracer?: string | undefined;
  readonly secondTracer?: string | undefined;
}

/** A wire: an ink casing with the colour inside, as thick as its area asks. */
export interface WireMark {
  readonly kind: "wire";
  readonly id?: string | undefined;
  readonly points: readonly PointMm[];
  /** Null where the size is not known yet: drawn at the smallest body. */
  readonly areaMm2: number | null;
  /** Null where the colour is not known yet: drawn white, dashed edge. */
  readonly colours: WireColours | null;
  /** Set in another size than a sheet's own; absent: 1. */
  readonly sizeRatio?: number | undefined;
}

/** A symbol set down with its centre at a point. */
export interface SymbolMark extends SymbolPlacement {
  readonly kind: "symbol";
  readonly id?: string | undefined;
}

export interface SymbolPlacement {
  readonly symbol: SymbolName;
  readonly at: PointMm;
  /** Quarter turns clockwise; letters inside stay upright. */
  readonly turnDeg?: 0 | 90 | 180 | 270 | undefined;
  /** Left and right exchanged, before turning. */
  readonly mirrored?: boolean | undefined;
  /** Set in another size than a sheet's own, about its centre; absent: 1. */
  readonly sizeRatio?: number | undefined;
}

export type PrimitiveMark = LineMark | PolylineMark | PathMark | RectMark | CircleMark | TextMark;
export type Mark = PrimitiveMark | GroupMark | WireMark | SymbolMark;

export interface Page {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly title: string;
  /** Where the page stands in the outline of the document, from the outside in; empty: not listed. */
  readonly bookmark: readonly string[];
  readonly marks: readonly Mark[];
}

/** Pages with what is said about them. Everything comes from the job, nothing from a clock: the same document gives the same bytes. */
export interface DrawingDocument {
  readonly title: string;
  readonly subject: string;
  /** Date of the job, YYYY-MM-DD. */
  readonly date: string;
  readonly pages: readonly Page[];
}

export const point = (xMm: number, yMm: number): PointMm => ({ xMm, yMm });

export const area = (xMm: number, yMm: number, widthMm: number, heightMm: number): AreaMm => ({
  xMm,
  yMm,
  widthMm,
  heightMm,
});
