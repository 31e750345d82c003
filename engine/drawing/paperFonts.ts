/** Weights the papers use. */
export type FontWeight = 400 | 600 | 700 | 800;

/** One font file. Text faces come in two files (basic Latin, extended Latin); the fallback covers Greek, Cyrillic, mathematics and arrows. */
export type FontFaceKey =
  | `latin${FontWeight}`
  | `latinExt${FontWeight}`
  | "fallback400"
  | "fallback700";

/** The bytes of every face, read by whoever has a disk or a network and handed in. */
export type PaperFonts = Readonly<Record<FontFaceKey, Uint8Array>>;

const TEXT_FOLDER = "@fontsource/atkinson-hyperlegible-next/files/atkinson-hyperlegible-next";

/** Where each face lies, as a module path to resolve: package, then file. */
export const PAPER_FONT_FILES: Readonly<Record<FontFaceKey, string>> = {
  latin400: `${TEXT_FOLDER}-latin-400-normal.woff`,
  latin600: `${TEXT_FOLDER}-latin-600-normal.woff`,
  latin700: `${TEXT_FOLDER}-latin-700-normal.woff`,
  latin800: `${TEXT_FOLDER}-latin-800-normal.woff`,
  latinExt400: `${TEXT_FOLDER}-latin-ext-400-normal.woff`,
  latinExt600: `${TEXT_FOLDER}-latin-ext-600-normal.woff`,
  latinExt700: `${TEXT_FOLDER}-latin-ext-700-normal.woff`,
  latinExt800: `${TEXT_FOLDER}-latin-ext-800-normal.woff`,
  fallback400: "dejavu-fonts-ttf/ttf/DejaVuSans.ttf",
  fallback700: "dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf",
};

/** Faces tried in turn for one weight. */
export function facesOfWeight(weight: FontWeight): readonly FontFaceKey[] {
  const fallback = weight === 400 ? "fallback400" : "fallback700";
  return [`latin${weight}`, `latinExt${weight}`, fallback];
}
