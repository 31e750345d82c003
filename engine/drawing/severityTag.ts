import type { Severity } from "../messages/index.ts";
import type { PaletteToken } from "./colourToken.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { type Mark, type PointMm, point } from "./scene.ts";

const TAG_HEIGHT_MM = 5.5;
const CUT_MM = 1.6;
const HEAD_MM = 5;

const COLOURS: Readonly<Record<Severity, PaletteToken>> = {
  stop: "stop",
  mend: "mend",
  advise: "advise",
  "not-proven": "ink2",
};

const WORDS: Readonly<Record<Severity, string>> = {
  stop: "stop",
  mend: "mend",
  advise: "advise",
  "not-proven": "not proven",
};

export const severityTagWidthMm = (severity: Severity): number =>
  HEAD_MM + measureTextMm(WORDS[severity], CAP_MM.text, 700) + 2;

/**
 * A swing tag with its word. More ink and more cut corners mean more serious: `stop` is solid with four corners cut, `mend` has the end with
 * the hole solid and cut, `advise` is square and open, `not proven` is open and dashed.
 */
export function severityTag(severity: Severity, topLeft: PointMm): Mark[] {
  const { xMm, yMm } = topLeft;
  const colour = COLOURS[severity];
  const widthMm = severityTagWidthMm(severity);
  const isSolid = severity === "stop";
  const cuts = { stop: [CUT_MM, CUT_MM], mend: [CUT_MM, 0] }[severity as "stop" | "mend"] ?? [0, 0];
  const dashMm = severity === "not-proven" ? [1, 0.8] : undefined;
  const marks: Mark[] = [
    {
      kind: "polyline",
      points: outline(xMm, yMm, widthMm, cuts[0]!, cuts[1]!),
      closed: true,
      stroke: { widthMm: LINE_MM.symbol, colour, dashMm },
      fill: isSolid ? colour : "ground",
    },
  ];
  if (severity === "mend") {
    marks.push({
      kind: "polyline",
      points: outline(xMm, yMm, HEAD_MM - 1, CUT_MM, 0),
      closed: true,
      fill: colour,
    });
  }
  const hasSolidHead = isSolid || severity === "mend";
  marks.push(
    {
      kind: "circle",
      centre: point(xMm + 2.4, yMm + TAG_HEIGHT_MM / 2),
      radiusMm: 0.7,
      fill: "ground",
      stroke: hasSolidHead ? undefined : { widthMm: LINE_MM.detail, colour },
    },
    {
      kind: "text",
      text: WORDS[severity],
      at: point(xMm + HEAD_MM, yMm + (TAG_HEIGHT_MM + CAP_MM.text) / 2 - 0.15),
      capHeightMm: CAP_MM.text,
      weight: 700,
      anchor: "start",
      colour: isSolid ? "ground" : colour,
    },
  );
  return [{ kind: "group", name: WORDS[severity], marks }];
}

export const SEVERITY_TAG_HEIGHT_MM = TAG_HEIGHT_MM;

/** A box with its left corners cut by one length and its right corners by another. */
function outline(
  xMm: number,
  yMm: number,
  widthMm: number,
  leftCutMm: number,
  rightCutMm: number,
): PointMm[] {
  const rightMm = xMm + widthMm;
  const bottomMm = yMm + TAG_HEIGHT_MM;
  return [
    point(xMm, yMm + leftCutMm),
    point(xMm + leftCutMm, yMm),
    point(rightMm - rightCutMm, yMm),
    point(rightMm, yMm + rightCutMm),
    point(rightMm, bottomMm - rightCutMm),
    point(rightMm - rightCutMm, bottomMm),
    point(xMm + leftCutMm, bottomMm),
    point(xMm, bottomMm - leftCutMm),
  ];
}
