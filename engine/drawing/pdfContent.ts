import { expandMark } from "./expandMark.ts";
import { type FontRun, fontRuns } from "./fontRuns.ts";
import { emMm, measureTextMm, textAreaMm } from "./measureTextMm.ts";
import type { Palette } from "./palette.ts";
import type { FontFaceKey } from "./paperFonts.ts";
import { mmText } from "./pathText.ts";
import type { PdfFace } from "./pdfFaces.ts";
import { pdfPath, rectText } from "./pdfPath.ts";
import { type Mark, type Painted, point, type Stroke, type TextMark } from "./scene.ts";
import { colourValue } from "./wireColour.ts";

/** Accents that ride on letters need their places from the font. */
const HAS_COMBINING = /\p{M}/u;

/** What the page is set to; only what changes is written. */
interface State {
  readonly operators: string[];
  readonly set: Map<string, string>;
}

/** Marks as PDF operators on a page whose unit is the millimetre, y downwards. */
export function pdfContent(
  marks: readonly Mark[],
  palette: Palette,
  faceOf: (key: FontFaceKey) => PdfFace,
): string {
  const state: State = { operators: [], set: new Map() };
  put(state, "join", "1 j");
  const draw = (mark: Mark): void => {
    const expanded = expandMark(mark, palette);
    if (expanded.kind === "group") expanded.marks.forEach(draw);
    else if (expanded.kind === "text") drawText(state, expanded, palette, faceOf);
    else paint(state, pdfPath(expanded), expanded, palette);
  };
  marks.forEach(draw);
  return state.operators.join("\n");
}

function put({ operators, set }: State, what: string, operator: string): void {
  if (set.get(what) === operator) return;
  set.set(what, operator);
  operators.push(operator);
}

const colourText = (hex: string): string =>
  [1, 3, 5].map((i) => mmText(Number.parseInt(hex.slice(i, i + 2), 16) / 255)).join(" ");

function paint(state: State, path: string, { stroke, fill }: Painted, palette: Palette): void {
  if (stroke) setStroke(state, stroke, palette);
  if (fill) put(state, "fill", `${colourText(colourValue(fill, palette))} rg`);
  const painter = stroke ? (fill ? "B" : "S") : fill ? "f" : null;
  if (painter !== null) state.operators.push(`${path} ${painter}`);
}

function setStroke(state: State, stroke: Stroke, palette: Palette): void {
  const { widthMm, colour, cap = "butt", dashMm = [], dashOffsetMm = 0 } = stroke;
  put(state, "width", `${mmText(widthMm)} w`);
  put(state, "cap", cap === "round" ? "1 J" : "0 J");
  put(state, "dash", `[${dashMm.map(mmText).join(" ")}] ${mmText(dashOffsetMm)} d`);
  put(state, "stroke", `${colourText(colourValue(colour, palette))} RG`);
}

function drawText(
  state: State,
  mark: TextMark,
  palette: Palette,
  faceOf: (key: FontFaceKey) => PdfFace,
): void {
  if (mark.onGround) paint(state, rectText(textAreaMm(mark)), { fill: "ground" }, palette);
  const runs = fontRuns(mark.text, mark.weight);
  if (runs.length === 0) return;
  put(state, "fill", `${colourText(colourValue(mark.colour, palette))} rg`);
  const widthMm = measureTextMm(mark.text, mark.capHeightMm, mark.weight);
  let alongMm = { start: 0, middle: -widthMm / 2, end: -widthMm }[mark.anchor];
  state.operators.push("BT");
  for (const run of runs) {
    setRun(state, run, mark, alongMm, faceOf(run.face));
    alongMm += run.widthMm * mark.capHeightMm;
  }
  state.operators.push("ET");
}

const ratioText = (ratio: number): string => String(Math.round(ratio * 1e6) / 1e6 + 0);

/** Letters of one face, `alongMm` along the base line from where the text is anchored. */
function setRun(state: State, run: FontRun, mark: TextMark, alongMm: number, face: PdfFace): void {
  face.use();
  const sizeMm = emMm(run.face, mark.capHeightMm);
  put(state, "face", `/${face.id} ${ratioText(sizeMm)} Tf`);
  const turn = ((mark.turnDeg ?? 0) * Math.PI) / 180;
  const [cosine, sine] = [Math.cos(turn), Math.sin(turn)];
  // Letters stand upright on a page whose y runs down: their own up is turned over.
  const lay = (fromMm: number, raisedMm: number, hex: string): void => {
    const at = point(
      mark.at.xMm + fromMm * cosine + raisedMm * sine,
      mark.at.yMm + fromMm * sine - raisedMm * cosine,
    );
    const matrix = [cosine, sine, sine, -cosine].map(ratioText).join(" ");
    state.operators.push(`${matrix} ${mmText(at.xMm)} ${mmText(at.yMm)} Tm <${hex}> Tj`);
  };
  if (!HAS_COMBINING.test(run.text)) {
    lay(alongMm, 0, face.hex(run.text));
    return;
  }
  const [hexes, places] = face.placed(run.text);
  let fromMm = alongMm;
  hexes.forEach((hex, i) => {
    const { xAdvance, xOffset, yOffset } = places[i]!;
    lay(fromMm + (xOffset * sizeMm) / 1000, (yOffset * sizeMm) / 1000, hex);
    fromMm += (xAdvance * sizeMm) / 1000;
  });
}
