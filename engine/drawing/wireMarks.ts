import { contrastRatio } from "./contrastRatio.ts";
import { WIRE_EDGE_MM, wireBodyMm } from "./lineWidth.ts";
import type { Palette } from "./palette.ts";
import { scaled, scaleMark } from "./scaleMarks.ts";
import type { PolylineMark, Stroke, WireColours, WireMark } from "./scene.ts";
import { colourValue, isLight } from "./wireColour.ts";

/** Tracer and hairline as parts of the body's width. The dash is one for all bodies, so that a short piece of thick wire shows it too. */
const TRACER_RATIO = 0.44;
const HAIRLINE_RATIO = 0.74;
const DASH_ON_MM = 2;
const DASH_OFF_MM = 1.4;

/** Under this contrast to the body a tracer is set on a hairline of the opposite kind. */
export const TRACER_CONTRAST_MIN = 2.2;

/** What is drawn of a wire from the outside in: casing, body, then hairline and tracers where it has any. */
export function wireMarks(mark: WireMark, palette: Palette): PolylineMark[] {
  const { sizeRatio = 1 } = mark;
  if (sizeRatio === 1) return strokesOf(mark, palette);
  const points = mark.points.map((at) => scaled(at, 1 / sizeRatio));
  const strokes = strokesOf({ ...mark, points }, palette);
  return strokes.map((stroke) => scaleMark(stroke, sizeRatio) as PolylineMark);
}

function strokesOf(mark: WireMark, palette: Palette): PolylineMark[] {
  const bodyMm = wireBodyMm(mark.areaMm2);
  const line = (stroke: Stroke): PolylineMark => ({
    kind: "polyline",
    points: mark.points,
    stroke,
  });
  const casing = line({ widthMm: bodyMm + 2 * WIRE_EDGE_MM, colour: "ink" });
  const { colours } = mark;
  if (!colours) {
    const dashMm = [1, 1];
    return [
      line({ widthMm: bodyMm + 2 * WIRE_EDGE_MM, colour: "ink", dashMm }),
      line({ widthMm: bodyMm, colour: "ground" }),
    ];
  }
  const body = line({ widthMm: bodyMm, colour: `wire:${colours.main}` });
  return [casing, body, ...tracerStrokes(colours, bodyMm, palette).map(line)];
}

function tracerStrokes(colours: WireColours, bodyMm: number, palette: Palette): Stroke[] {
  const tracers = [colours.tracer, colours.secondTracer].filter((word) => word !== undefined);
  const restMm = (DASH_ON_MM + DASH_OFF_MM) * (tracers.length - 1) + DASH_OFF_MM;
  return tracers.flatMap((tracer, i) => {
    const periodMm = DASH_ON_MM + restMm;
    const dashOffsetMm = (periodMm - i * (DASH_ON_MM + DASH_OFF_MM)) % periodMm;
    const dash = { dashMm: [DASH_ON_MM, restMm], dashOffsetMm };
    const bodyValue = colourValue(`wire:${colours.main}`, palette);
    const tracerValue = colourValue(`wire:${tracer}`, palette);
    const contrast = contrastRatio(bodyValue, tracerValue);
    const opposite = isLight(bodyValue) ? "wire:black" : "wire:white";
    const thread: Stroke = { widthMm: TRACER_RATIO * bodyMm, colour: `wire:${tracer}`, ...dash };
    if (!palette.hasGreys) return [{ ...thread, colour: opposite }];
    if (contrast >= TRACER_CONTRAST_MIN) return [thread];
    return [{ ...thread, widthMm: HAIRLINE_RATIO * bodyMm, colour: opposite }, thread];
  });
}
