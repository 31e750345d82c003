import type { FontFaceKey } from "./paperFonts.ts";

/** One laid-out piece of text as the PDF library keeps it; places in thousandths of the letter square. */
interface GlyphRun {
  readonly glyphs: readonly unknown[];
  readonly positions: readonly GlyphPlace[];
  readonly advanceWidth: number;
}

export interface GlyphPlace {
  readonly xAdvance: number;
  readonly xOffset: number;
  readonly yOffset: number;
}

/** A face open in one document, as the PDF library keeps it. */
interface OpenFont {
  readonly id: string;
  /** The face as it was read, which any document can embed. */
  readonly font: unknown;
  layoutRun: (text: string, features: unknown) => GlyphRun;
  encode(text: string, features: unknown): readonly [hex: string[], places: GlyphPlace[]];
  ref(): unknown;
}

/** A face read once: what the next document opens, and its characters laid out so far. */
interface ReadFace {
  readonly font: unknown;
  readonly known: Map<string, GlyphRun>;
}

/** Faces read so far, carried from one document to the next. */
export type ReadFaces = Map<FontFaceKey, ReadFace>;

/** How a document names and sets a face. */
export interface PdfFace {
  readonly id: string;
  /** Puts the face among those the open page uses. */
  use(): void;
  /** Glyphs of plain text, four hexadecimal digits each. */
  hex(text: string): string;
  /** Glyphs and places of text whose accents ride on letters. */
  placed(text: string): readonly [hex: string[], places: GlyphPlace[]];
}

/** Tabular figures, no pair kerning and no ligatures: what `measureTextMm` measures. */
const FEATURES = { kern: false, liga: false, tnum: true };

/**
 * Faces of one document. Each is opened where it is first used. Without kerning and ligatures a character has the same glyph wherever it stands, so every
 * one is laid out once for all documents and looked up after.
 */
export function pdfFaces(pdf: PDFKit.PDFDocument, read: ReadFaces): (face: FontFaceKey) => PdfFace {
  const opened = new Map<FontFaceKey, PdfFace>();
  return (key) => {
    const found = opened.get(key) ?? openFace(pdf, key, read);
    opened.set(key, found);
    return found;
  };
}

interface OpenPdf {
  readonly _font: OpenFont;
  readonly page: { readonly fonts: Record<string, unknown> };
}

function openFace(pdf: PDFKit.PDFDocument, key: FontFaceKey, read: ReadFaces): PdfFace {
  const before = read.get(key);
  if (before) pdf.registerFont(key, before.font as string);
  pdf.font(key);
  const inside = pdf as unknown as OpenPdf;
  const font = inside._font;
  const { known } = before ?? { known: new Map<string, GlyphRun>() };
  read.set(key, { font: font.font, known });
  const whole = font.layoutRun.bind(font);
  font.layoutRun = (text, features) => {
    const run = known.get(text) ?? withOwnCharacters(whole(text, features), text);
    known.set(text, run);
    return run;
  };
  const hexOf = new Map<string, string>();
  return {
    id: font.id,
    use: () => {
      inside.page.fonts[font.id] ??= font.ref();
    },
    hex: (text) => {
      let all = "";
      for (const character of text) {
        let hex = hexOf.get(character);
        if (hex === undefined) {
          hex = font.encode(character, FEATURES)[0].join("");
          hexOf.set(character, hex);
        }
        all += hex;
      }
      return all;
    },
    placed: (text) => font.encode(text, FEATURES),
  };
}

/**
 * The run with each glyph standing for the character it was asked for. One glyph may set several (a space and one that does not break), and the library keeps
 * with it the first it ever met, in whatever document: what is copied out of a page would depend on the papers made before it.
 */
function withOwnCharacters(run: GlyphRun, text: string): GlyphRun {
  const characters = [...text];
  if (run.glyphs.length !== characters.length) return run;
  const glyphs = run.glyphs.map((glyph, i) =>
    Object.create(glyph as object, { codePoints: { value: [characters[i]!.codePointAt(0)] } }),
  );
  return Object.create(run, { glyphs: { value: glyphs } });
}
