import {
  type Block,
  CAP_MM,
  type ColourToken,
  fitText,
  LINE_MM,
  type Mark,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { FallStep } from "../../supply/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";

const ROW_MM = 6;
const NAME_MM = 46;
const VALUE_MM = 22;
/** Steps under this share of what is lost are drawn as one. */
const SMALL_RATIO = 0.01;
/** A plot of so few rows is not parted by a page; of a longer one some stay with the heading. */
const WHOLE_ROWS = 14;
const KEPT_ROWS = 4;

interface Bar {
  readonly name: string;
  readonly dropV: number;
  readonly side: FallStep["side"];
}

/**
 * Volts lost step by step, each bar beginning where the one above ended; the load itself is a line of text between its two sides,
 * because what it gets is many times what is lost.
 */
export function fallBlocks(
  fall: readonly FallStep[],
  nameOf: (id: string) => string,
  widthMm: number,
): readonly Block[] {
  const lostV = fall.reduce((sumV, { side, dropV }) => (side === "load" ? sumV : sumV + dropV), 0);
  if (lostV <= 0) return [];
  const scaleMm = (widthMm - NAME_MM - VALUE_MM) / lostV;
  let beforeV = 0;
  const bars = barsOf(fall, nameOf, lostV);
  return bars.map((bar, k): Block => {
    const keepWithNext = bars.length <= WHOLE_ROWS || k < KEPT_ROWS;
    if (bar.side === "load") return { ...loadRow(bar, widthMm), keepWithNext };
    const fromMm = NAME_MM + beforeV * scaleMm;
    beforeV += bar.dropV;
    const goesOn = k > 0 && bars[k - 1]!.side !== "load";
    return { ...stepRow(bar, fromMm, NAME_MM + beforeV * scaleMm, goesOn), keepWithNext };
  });
}

function barsOf(
  fall: readonly FallStep[],
  nameOf: (id: string) => string,
  lostV: number,
): readonly Bar[] {
  const bars: Bar[] = [];
  for (const side of ["battery", "live", "load", "earth"] as const) {
    const steps = fall.filter((step) => step.side === side);
    const few = steps.filter(({ dropV }) => side !== "load" && dropV < SMALL_RATIO * lostV);
    const small = few.length > 1 ? few : [];
    for (const step of steps) {
      if (!small.includes(step)) bars.push({ name: nameOf(step.of), dropV: step.dropV, side });
    }
    const smallV = small.reduce((sumV, { dropV }) => sumV + dropV, 0);
    if (small.length > 0) {
      bars.push({ name: `${small.length} small steps`, dropV: smallV, side });
    }
  }
  return bars;
}

const FILL: Readonly<Record<FallStep["side"], ColourToken>> = {
  battery: "advise",
  live: "copper",
  load: "ink",
  earth: "verdigris",
};

/** Under a hundredth of a volt in millivolts. */
const smallVolts = (v: number): string =>
  v < 0.01 ? `${printNumber(1000 * v, 0)} mV` : printQuantity(v, "V");

/** A bar, and a hair down to the row below; each row draws its own half of it, because a page may part the two. */
function stepRow({ name, dropV, side }: Bar, fromMm: number, toMm: number, goesOn: boolean): Block {
  const baseMm = ROW_MM / 2 + CAP_MM.text / 2;
  const box = { xMm: 0, yMm: 1.2, widthMm: NAME_MM - 3, heightMm: ROW_MM - 1 };
  const words = fitText(name, box, {
    weight: 400,
    colour: "ink",
    capsMm: [CAP_MM.text, CAP_MM.fine],
  });
  const marks: Mark[] = [
    ...words,
    {
      kind: "rect",
      area: {
        xMm: fromMm,
        yMm: 1,
        widthMm: Math.max(toMm - fromMm, LINE_MM.symbol),
        heightMm: ROW_MM - 2,
      },
      fill: FILL[side],
    },
    ...(goesOn ? [hair(fromMm, 0, 1)] : []),
    hair(toMm, 1, ROW_MM),
    textMark(smallVolts(dropV), toMm + 2, baseMm, TEXT_STYLE.text),
  ];
  return { heightMm: ROW_MM, marks };
}

const hair = (xMm: number, topMm: number, footMm: number): Mark => ({
  kind: "line",
  from: point(xMm, topMm),
  to: point(xMm, footMm),
  stroke: { widthMm: LINE_MM.leader, colour: "rule" },
});

function loadRow({ name, dropV }: Bar, widthMm: number): Block {
  const baseMm = ROW_MM / 2 + CAP_MM.text / 2 + 0.5;
  const words = `${name} gets ${printQuantity(dropV, "V")}`;
  return {
    heightMm: ROW_MM + 1,
    marks: [
      {
        kind: "rect",
        area: { xMm: 0, yMm: 0.5, widthMm, heightMm: ROW_MM },
        fill: "pale",
      },
      textMark(words, 1, baseMm, TEXT_STYLE.strong),
    ],
  };
}
