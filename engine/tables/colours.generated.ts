// Generated from data/colours.csv by tools/generate/tables.ts: change the CSV, not this.
import type { Confidence } from "./figure.ts";

const from = {
  "house-look": "the look of this program: drawing values of wire colours",
  "japanese-letters": "letters commonly used on Japanese diagrams",
  "letter-systems": "IEC 60757 as copied in two public tables; British AU7 letters and German letters from owners' pages",
} as const;

export interface ColoursRow {
  readonly id: string;
  readonly word: string;
  readonly hex: string;
  readonly drawingCode: string;
  readonly iec60757: string | null;
  readonly au7: string | null;
  readonly german: string | null;
  readonly japanese: string | null;
  readonly japaneseSource: string | null;
  readonly japanesePlace: string | null;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}

const rows = [
  { id: "black", word: "black", hex: "#1B1D1E", drawingCode: "Bk", iec60757: "BK", au7: "B", german: "sw", japanese: "B", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "white", word: "white", hex: "#FFFFFF", drawingCode: "W", iec60757: "WH", au7: "W", german: "ws", japanese: "W", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "red", word: "red", hex: "#C7201F", drawingCode: "R", iec60757: "RD", au7: "R", german: "rt", japanese: "R", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "yellow", word: "yellow", hex: "#F4CE18", drawingCode: "Y", iec60757: "YE", au7: "Y", german: "ge", japanese: "Y", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "green", word: "green", hex: "#1C8A42", drawingCode: "G", iec60757: "GN", au7: "G", german: "gn", japanese: "G", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "light-green", word: "light green", hex: "#9AD04E", drawingCode: "Lg", iec60757: null, au7: "LG", german: "hgn", japanese: "Lg", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "purple", word: "purple", hex: "#7C3F9E", drawingCode: "P", iec60757: "VT", au7: "P", german: "vi", japanese: "V", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "blue", word: "blue", hex: "#1F3D9E", drawingCode: "Bl", iec60757: "BU", au7: "U", german: "bl", japanese: "L", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "light-blue", word: "light blue", hex: "#7DBBE6", drawingCode: "Lb", iec60757: null, au7: null, german: "hb", japanese: "Sb", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "grey", word: "grey", hex: "#8E9492", drawingCode: "Gr", iec60757: "GY", au7: "S", german: "gr", japanese: "Gr", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "pink", word: "pink", hex: "#F093B4", drawingCode: "K", iec60757: "PK", au7: "K", german: "rs", japanese: "P", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "orange", word: "orange", hex: "#EE7D1A", drawingCode: "O", iec60757: "OG", au7: "O", german: "or", japanese: "O", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "brown", word: "brown", hex: "#7A4722", drawingCode: "Br", iec60757: "BN", au7: "N", german: "br", japanese: "Br", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["letter-systems"], place: "code table", confidence: "secondary" },
  { id: "dark-brown", word: "dark brown", hex: "#4A2A14", drawingCode: "Db", iec60757: null, au7: null, german: null, japanese: "Ch", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["house-look"], place: "own value", confidence: "own" },
  { id: "dark-green", word: "dark green", hex: "#0E5A2A", drawingCode: "Dg", iec60757: null, au7: null, german: null, japanese: "Dg", japaneseSource: from["japanese-letters"], japanesePlace: "common practice", source: from["house-look"], place: "own value", confidence: "own" },
] as const satisfies readonly ColoursRow[];

export const colours: readonly ColoursRow[] = rows;

/** Unit of each column that holds a figure; null: the row's own `unit`. */
export const coloursUnits = {
} as const;
