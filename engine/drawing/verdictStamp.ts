import type { PaletteToken } from "./colourToken.ts";
import { fitText } from "./fitText.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { type AreaMm, area, type Mark, point, type Stroke } from "./scene.ts";

/** What a plan is found to be as a whole. */
export type Verdict = "fit" | "mend" | "stop" | "not proven";

const COLOURS: Readonly<Record<Verdict, PaletteToken>> = {
  fit: "verdigris",
  mend: "mend",
  stop: "stop",
  "not proven": "ink2",
};

const inset = (box: AreaMm, byMm: number): AreaMm =>
  area(box.xMm + byMm, box.yMm + byMm, box.widthMm - 2 * byMm, box.heightMm - 2 * byMm);

/**
 * The verdict as a rubber stamp: its word, and an edge that says the same without colour. `fit` a double line, `mend` double with the outer
 * one dashed, `stop` one heavy line with its corners cut, `not proven` dotted.
 *
 * @param note  counts or reason, set small under the word
 */
export function verdictStamp(verdict: Verdict, note: string, box: AreaMm): Mark[] {
  const colour = COLOURS[verdict];
  const word = { weight: 800, colour, anchor: "middle" } as const;
  const wordTopMm = note === "" ? (box.heightMm - CAP_MM.wireNumber) / 2 : 3.2;
  const wordArea = area(box.xMm + 3, box.yMm + wordTopMm, box.widthMm - 6, 6.7);
  const noteArea = area(box.xMm + 3, box.yMm + box.heightMm - 5.6, box.widthMm - 6, 4.6);
  const marks: Mark[] = [
    ...stampEdges(verdict, colour, box),
    ...fitText(verdict, wordArea, { ...word, capsMm: [CAP_MM.wireNumber, CAP_MM.part] }),
  ];
  if (note !== "") {
    marks.push(
      ...fitText(note, noteArea, {
        weight: 600,
        colour: "ink",
        anchor: "middle",
        capsMm: [CAP_MM.fine],
      }),
    );
  }
  return [{ kind: "group", name: `verdict: ${verdict}`, marks }];
}

function stampEdges(verdict: Verdict, colour: PaletteToken, box: AreaMm): Mark[] {
  const edge = (byMm: number, stroke: Omit<Stroke, "colour">): Mark => ({
    kind: "rect",
    area: inset(box, byMm),
    stroke: { ...stroke, colour },
  });
  switch (verdict) {
    case "fit":
      return [edge(0.35, { widthMm: LINE_MM.frame }), edge(1.6, { widthMm: LINE_MM.detail })];
    case "mend":
      return [
        edge(0.35, { widthMm: LINE_MM.frame, dashMm: [2, 1.2] }),
        edge(1.6, { widthMm: LINE_MM.detail }),
      ];
    case "not proven":
      return [edge(0.35, { widthMm: LINE_MM.frame, dashMm: [0.7, 1.1] })];
    case "stop":
      return [cutCorners(inset(box, 0.7), 3, { widthMm: 1.4, colour })];
  }
}

function cutCorners({ xMm, yMm, widthMm, heightMm }: AreaMm, cutMm: number, stroke: Stroke): Mark {
  const rightMm = xMm + widthMm;
  const bottomMm = yMm + heightMm;
  return {
    kind: "polyline",
    closed: true,
    stroke,
    points: [
      point(xMm + cutMm, yMm),
      point(rightMm - cutMm, yMm),
      point(rightMm, yMm + cutMm),
      point(rightMm, bottomMm - cutMm),
      point(rightMm - cutMm, bottomMm),
      point(xMm + cutMm, bottomMm),
      point(xMm, bottomMm - cutMm),
      point(xMm, yMm + cutMm),
    ],
  };
}
