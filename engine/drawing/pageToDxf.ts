import Drawing from "dxf-writer";
import Handle from "dxf-writer/src/Handle.js";
import { expandMark } from "./expandMark.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { palettes } from "./palette.ts";
import type { Mark, Page, Painted, PathStep, PointMm, PrimitiveMark, TextMark } from "./scene.ts";

/** A vertex with the bulge of the piece that leaves it: tan of a quarter of its arc, anticlockwise positive. */
type Vertex = [xMm: number, yMm: number, bulge?: number];

/** A curve this close to a circle is written as an arc, mm. */
const ARC_WITHIN_MM = 0.02;
const CURVE_CHORDS = 16;
const OWN_LAYER = "drawing";

/**
 * One page as DXF text in millimetres, y up: lines, polylines with arcs, circles and text, on a layer for each kind of thing
 * drawn. A plotter draws lines, so what is only ground colour is left out and a line drawn several times over (an outline
 * under a body) appears once. The same page gives the same text.
 */
export function pageToDxf(page: Page): string {
  Handle.seed = 0;
  const drawing = new Drawing();
  drawing.setUnits("Millimeters");
  const layers = new Set<string>();
  const drawn = new Set<string>();
  const use = (layer: string): void => {
    if (!layers.has(layer)) drawing.addLayer(layer, Drawing.ACI.WHITE, "CONTINUOUS");
    layers.add(layer);
    drawing.setActiveLayer(layer);
  };
  const visit = (mark: Mark, layer: string): void => {
    const expanded = expandMark(mark, palettes.print);
    if (expanded.kind === "group") {
      const own = expanded.name === undefined ? layer : layerName(expanded.name);
      for (const one of expanded.marks) visit(one, own);
      return;
    }
    if (expanded.kind === "text") {
      use("text");
      drawText(drawing, expanded, page.heightMm);
      return;
    }
    if (isGround(expanded)) return;
    for (const { vertices, isClosed } of outlinesOf(expanded, page.heightMm)) {
      const key = JSON.stringify([layer, vertices, isClosed]);
      if (drawn.has(key)) continue;
      drawn.add(key);
      use(layer);
      drawing.drawPolyline(vertices as [number, number][], isClosed);
    }
    if (expanded.kind === "circle") {
      use(layer);
      const { xMm, yMm } = expanded.centre;
      drawing.drawCircle(exact(xMm), exact(page.heightMm - yMm), exact(expanded.radiusMm));
    }
  };
  for (const mark of page.marks) visit(mark, OWN_LAYER);
  return `${drawing.toDxfString()}\n`;
}

const layerName = (name: string): string => name.replace(/[^A-Za-z0-9_-]+/g, "-");

/** Nothing of it would be seen: only ground or pale colour. */
function isGround(mark: PrimitiveMark): boolean {
  const { stroke, fill } = mark as Painted;
  const unseen = (colour: string | undefined): boolean =>
    colour === undefined || colour === "ground" || colour === "pale";
  return unseen(stroke?.colour) && unseen(fill);
}

/** Micrometre thousandths: finer than any plotter, and free of the noise of sums. */
const exact = (valueMm: number): number => Math.round(valueMm * 1e6) / 1e6;

function drawText(drawing: Drawing, mark: TextMark, heightMm: number): void {
  const widthMm = measureTextMm(mark.text, mark.capHeightMm, mark.weight);
  const backMm = { start: 0, middle: widthMm / 2, end: widthMm }[mark.anchor];
  const turn = ((mark.turnDeg ?? 0) * Math.PI) / 180;
  const xMm = mark.at.xMm - backMm * Math.cos(turn);
  const yMm = mark.at.yMm - backMm * Math.sin(turn);
  drawing.drawText(
    exact(xMm),
    exact(heightMm - yMm),
    mark.capHeightMm,
    exact(-(mark.turnDeg ?? 0)),
    escaped(mark.text),
  );
}

/** Letters beyond ASCII as the format writes them: \U+00B0. */
const escaped = (text: string): string =>
  [...text]
    .map((letter) => {
      const code = letter.codePointAt(0)!;
      if (code >= 32 && code < 127) return letter;
      return `\\U+${code.toString(16).toUpperCase().padStart(4, "0")}`;
    })
    .join("");

interface Outline {
  readonly vertices: Vertex[];
  readonly isClosed: boolean;
}

function outlinesOf(mark: PrimitiveMark, heightMm: number): Outline[] {
  const up = ({ xMm, yMm }: PointMm): Vertex => [exact(xMm), exact(heightMm - yMm)];
  switch (mark.kind) {
    case "line":
      return [{ vertices: [up(mark.from), up(mark.to)], isClosed: false }];
    case "polyline":
      return [{ vertices: mark.points.map(up), isClosed: mark.closed ?? false }];
    case "rect": {
      const { xMm, yMm, widthMm, heightMm: tallMm } = mark.area;
      const corners = [
        { xMm, yMm },
        { xMm: xMm + widthMm, yMm },
        { xMm: xMm + widthMm, yMm: yMm + tallMm },
        { xMm, yMm: yMm + tallMm },
      ];
      return [{ vertices: corners.map(up), isClosed: true }];
    }
    case "path":
      return pathOutlines(mark.steps, up);
    default:
      return [];
  }
}

function pathOutlines(steps: readonly PathStep[], up: (at: PointMm) => Vertex): Outline[] {
  const outlines: Outline[] = [];
  let vertices: Vertex[] = [];
  let at: PointMm = { xMm: 0, yMm: 0 };
  const finish = (isClosed: boolean): void => {
    if (vertices.length > 1) outlines.push({ vertices, isClosed });
    vertices = [];
  };
  for (const step of steps) {
    if (step.pen === "close") {
      finish(true);
      continue;
    }
    if (step.pen !== "curve") {
      if (step.pen === "move") finish(false);
      vertices.push(up(step.to));
    } else {
      const bulge = bulgeOf(at, step);
      const last = vertices.at(-1)!;
      if (bulge !== null) {
        last[2] = bulge;
        vertices.push(up(step.to));
      } else {
        for (let i = 1; i <= CURVE_CHORDS; i++)
          vertices.push(up(onCurve(at, step, i / CURVE_CHORDS)));
      }
    }
    at = step.to;
  }
  finish(false);
  return outlines;
}

type Curve = Extract<PathStep, { pen: "curve" }>;

function onCurve(from: PointMm, { control1, control2, to }: Curve, t: number): PointMm {
  const u = 1 - t;
  const mix = (a: number, b: number, c: number, d: number): number =>
    u ** 3 * a + 3 * u * u * t * b + 3 * u * t * t * c + t ** 3 * d;
  return {
    xMm: mix(from.xMm, control1.xMm, control2.xMm, to.xMm),
    yMm: mix(from.yMm, control1.yMm, control2.yMm, to.yMm),
  };
}

/** Bulge of the circle through both ends with the curve's first direction, y up; null where the curve is no part of it. */
function bulgeOf(from: PointMm, curve: Curve): number | null {
  const { to, control1 } = curve;
  const chord = { x: to.xMm - from.xMm, y: to.yMm - from.yMm };
  const lengthMm = Math.hypot(chord.x, chord.y);
  const tangent = { x: control1.xMm - from.xMm, y: control1.yMm - from.yMm };
  if (lengthMm === 0 || Math.hypot(tangent.x, tangent.y) === 0) return null;
  const cross = tangent.x * chord.y - tangent.y * chord.x;
  const dot = tangent.x * chord.x + tangent.y * chord.y;
  const half = Math.atan2(cross, dot);
  const bulge = Math.tan(half / 2);
  // The middle of an arc stands off its chord by bulge times half the chord.
  const rise = (bulge * lengthMm) / 2;
  const middle = {
    xMm: (from.xMm + to.xMm) / 2 + (rise * chord.y) / lengthMm,
    yMm: (from.yMm + to.yMm) / 2 - (rise * chord.x) / lengthMm,
  };
  const found = onCurve(from, curve, 0.5);
  const offMm = Math.hypot(found.xMm - middle.xMm, found.yMm - middle.yMm);
  // On a page y runs down: what turns clockwise there turns anticlockwise upside down.
  return offMm <= ARC_WITHIN_MM ? exact(-bulge) : null;
}
