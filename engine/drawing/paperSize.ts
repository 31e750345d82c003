/** Sizes of paper a workshop printer takes, and A2 for the wall. */
export type PaperSize = "a4" | "a3" | "a2" | "letter";
export type Orientation = "portrait" | "landscape";

/** Portrait width and height, mm: ISO 216 A2, A3 and A4; US Letter 8.5 by 11 in of 25.4 mm. */
const PORTRAIT_MM: Readonly<Record<PaperSize, readonly [widthMm: number, heightMm: number]>> = {
  a4: [210, 297],
  a3: [297, 420],
  a2: [420, 594],
  letter: [8.5 * 25.4, 11 * 25.4],
};

export interface Paper {
  readonly size: PaperSize;
  readonly orientation: Orientation;
}

export function paperSizeMm(paper: Paper): { readonly widthMm: number; readonly heightMm: number } {
  const [shortMm, longMm] = PORTRAIT_MM[paper.size];
  return paper.orientation === "portrait"
    ? { widthMm: shortMm, heightMm: longMm }
    : { widthMm: longMm, heightMm: shortMm };
}
