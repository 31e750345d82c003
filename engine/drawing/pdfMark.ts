import { type LaidCharacters, layOutByCharacter } from "./charactersLaidOut.ts";
import type { PdfLayouts } from "./documentToPdf.ts";
import { expandMark } from "./expandMark.ts";
import { fontRuns } from "./fontRuns.ts";
import { emMm, measureTextMm, textAreaMm } from "./measureTextMm.ts";
import type { Palette } from "./palette.ts";
import { pathText, polylineSteps } from "./pathText.ts";
import type { Mark, Painted, TextMark } from "./scene.ts";
import { colourValue } from "./wireColour.ts";

/** Draws one mark on the open page, whose unit is the millimetre. */
export function drawPdfMark(
  pdf: PDFKit.PDFDocument,
  mark: Mark,
  palette: Palette,
  laid: PdfLayouts,
): void {
  const expanded = expandMark(mark, palette);
  switch (expanded.kind) {
    case "group":
      for (const inner of expanded.marks) drawPdfMark(pdf, inner, palette, laid);
      return;
    case "text":
      drawText(pdf, expanded, palette, laid);
      return;
    case "line":
      pdf.path(pathText(polylineSteps([expanded.from, expanded.to], false)));
      break;
    case "polyline":
      pdf.path(pathText(polylineSteps(expanded.points, expanded.closed ?? false)));
      break;
    case "path":
      pdf.path(pathText(expanded.steps));
      break;
    case "circle":
      pdf.circle(expanded.centre.xMm, expanded.centre.yMm, expanded.radiusMm);
      break;
    case "rect": {
      const { xMm, yMm, widthMm, heightMm } = expanded.area;
      if (expanded.cornerMm) pdf.roundedRect(xMm, yMm, widthMm, heightMm, expanded.cornerMm);
      else pdf.rect(xMm, yMm, widthMm, heightMm);
    }
  }
  paint(pdf, expanded, palette);
}

function paint(pdf: PDFKit.PDFDocument, { stroke, fill }: Painted, palette: Palette): void {
  if (stroke) {
    pdf
      .lineWidth(stroke.widthMm)
      .lineCap(stroke.cap ?? "butt")
      .lineJoin("round");
    if (stroke.dashMm) setDash(pdf, stroke.dashMm, stroke.dashOffsetMm ?? 0);
    pdf.strokeColor(colourValue(stroke.colour, palette));
  }
  if (fill) pdf.fillColor(colourValue(fill, palette));
  if (stroke && fill) pdf.fillAndStroke();
  else if (stroke) pdf.stroke();
  else if (fill) pdf.fill();
  if (stroke?.dashMm) pdf.undash();
}

/** The library takes a list of dashes, its types know of one pair only. */
function setDash(pdf: PDFKit.PDFDocument, dashMm: readonly number[], phase: number): void {
  pdf.dash(dashMm as unknown as number, { phase });
}

function drawText(
  pdf: PDFKit.PDFDocument,
  mark: TextMark,
  palette: Palette,
  laid: PdfLayouts,
): void {
  const widthMm = measureTextMm(mark.text, mark.capHeightMm, mark.weight);
  const startMm = { start: 0, middle: -widthMm / 2, end: -widthMm }[mark.anchor];
  if (mark.onGround) {
    drawPdfMark(pdf, { kind: "rect", area: textAreaMm(mark), fill: "ground" }, palette, laid);
  }
  pdf.save();
  if (mark.turnDeg) pdf.rotate(mark.turnDeg, { origin: [mark.at.xMm, mark.at.yMm] });
  pdf.fillColor(colourValue(mark.colour, palette));
  let xMm = mark.at.xMm + startMm;
  for (const run of fontRuns(mark.text, mark.weight)) {
    pdf.font(run.face).fontSize(emMm(run.face, mark.capHeightMm));
    const known: LaidCharacters = laid.get(run.face) ?? new Map();
    laid.set(run.face, known);
    layOutByCharacter(pdf, known);
    pdf.text(run.text, xMm, mark.at.yMm, {
      lineBreak: false,
      baseline: "alphabetic",
      features: {
        kern: false,
        liga: false,
        tnum: true,
      } as unknown as PDFKit.Mixins.OpenTypeFeatures[],
    });
    xMm += run.widthMm * mark.capHeightMm;
  }
  pdf.restore();
}
