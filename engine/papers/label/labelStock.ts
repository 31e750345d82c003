/** A sheet of labels as it is sold: all in millimetres from the top left corner of the paper. */
export interface LabelStock {
  readonly name: string;
  readonly columnCount: number;
  readonly rowCount: number;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly leftMm: number;
  readonly topMm: number;
  readonly pitchXMm: number;
  readonly pitchYMm: number;
}

/**
 * Default stocks by paper. Sizes of label sheets are common practice of office labels; whoever has another stock gives its
 * figures, and one print on plain paper held against the stock shows whether they are right.
 */
export const LABEL_STOCKS = {
  /** 65 labels of 38.1 × 21.2 mm on A4. */
  a4: {
    name: "38.1 × 21.2 mm, 65 a sheet",
    columnCount: 5,
    rowCount: 13,
    widthMm: 38.1,
    heightMm: 21.2,
    leftMm: 4.7,
    topMm: 10.7,
    pitchXMm: 40.6,
    pitchYMm: 21.2,
  },
  /** 80 labels of 1.75 × 0.5 in on US Letter. */
  letter: {
    name: "1.75 × 0.5 in, 80 a sheet",
    columnCount: 4,
    rowCount: 20,
    widthMm: 1.75 * 25.4,
    heightMm: 0.5 * 25.4,
    leftMm: 0.3 * 25.4,
    topMm: 0.5 * 25.4,
    pitchXMm: 2.05 * 25.4,
    pitchYMm: 0.5 * 25.4,
  },
} as const satisfies Readonly<Record<string, LabelStock>>;
