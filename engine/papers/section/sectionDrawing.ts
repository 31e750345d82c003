import {
  arcSteps,
  area,
  CAP_MM,
  type ColourToken,
  colourValue,
  type Drawn,
  isLight,
  LINE_MM,
  type Mark,
  measureTextMm,
  type PointMm,
  palettes,
  point,
  TEXT_STYLE,
  textMark,
} from "../../drawing/index.ts";
import type { Section, SectionWire } from "./sectionsOf.ts";

/** Drawn size over true size. */
export const SECTION_SCALE = 2;
/** A wire drawn narrower than its number has the number beside the picture. */
const NUMBER_INSET_MM = 0.5;

/** The circles as packed: insulation in its colour, tracer as a wedge, number inside. */
export function sectionDrawing({ bundle, wires }: Section): Drawn {
  const radiusMm = (bundle.asLaidMm / 2) * SECTION_SCALE;
  const reachMm = radiusMm + 2;
  const centre = point(reachMm, reachMm);
  const circles = bundle.wires.flatMap(({ odMm, xMm, yMm }, i): Mark[] => {
    const at = point(centre.xMm + xMm * SECTION_SCALE, centre.yMm - yMm * SECTION_SCALE);
    return wireCircle(at, (odMm / 2) * SECTION_SCALE, wires[i]!);
  });
  return {
    marks: [
      ...circles,
      ring(centre, (bundle.tightestMm / 2) * SECTION_SCALE, null),
      ring(centre, radiusMm, [2, 1.5]),
    ],
    widthMm: 2 * reachMm,
    heightMm: 2 * reachMm,
  };
}

const ring = (centre: PointMm, radiusMm: number, dashMm: readonly number[] | null): Mark => ({
  kind: "circle",
  centre,
  radiusMm,
  stroke: {
    widthMm: dashMm === null ? LINE_MM.detail : LINE_MM.leader,
    colour: "ink",
    dashMm: dashMm ?? undefined,
  },
});

/** One wire cut through. Its edge is ink inside its true diameter, so that neighbours touch as they do. */
function wireCircle(at: PointMm, radiusMm: number, wire: SectionWire): Mark[] {
  const edgeMm = LINE_MM.leader;
  const main: ColourToken = wire.colour === null ? "ground" : `wire:${wire.colour.main}`;
  const tracers = [wire.colour?.tracer, wire.colour?.secondTracer].filter(
    (one) => one !== undefined,
  );
  const wedges = tracers.map((tracer, i): Mark => {
    const from = 30 + i * 70;
    const steps = arcSteps(at, radiusMm - edgeMm, from, from + 60);
    return {
      kind: "path",
      steps: [...steps, { pen: "line", to: at }, { pen: "close" }],
      fill: `wire:${tracer}`,
      stroke: { widthMm: LINE_MM.leader, colour: "ink" },
    };
  });
  const body: Mark = {
    kind: "circle",
    centre: at,
    radiusMm: radiusMm - edgeMm / 2,
    fill: main,
    stroke: { widthMm: edgeMm, colour: "ink", dashMm: wire.colour === null ? [1, 1] : undefined },
  };
  return [
    {
      kind: "group",
      id: wire.id,
      of: "wire",
      marks: [body, ...wedges, ...numberInside(at, radiusMm, wire)],
    },
  ];
}

/** The number on a white or black ground of its own, where the circle holds it. */
function numberInside(at: PointMm, radiusMm: number, { number, colour }: SectionWire): Mark[] {
  const capMm = CAP_MM.fine;
  const widthMm = measureTextMm(number, capMm, 700);
  if (Math.hypot(widthMm / 2, capMm / 2) + NUMBER_INSET_MM > radiusMm) return [];
  const value = colour === null ? null : colourValue(`wire:${colour.main}`, palettes.print);
  const isPlain = colour?.tracer === undefined && (value === null || isLight(value));
  const label = textMark(
    number,
    at.xMm,
    at.yMm + capMm / 2,
    { ...TEXT_STYLE.fine, weight: 700, colour: "ink" },
    "middle",
  );
  const ground: Mark = {
    kind: "rect",
    area: area(at.xMm - widthMm / 2 - 0.3, at.yMm - capMm / 2 - 0.4, widthMm + 0.6, capMm + 0.8),
    fill: "ground",
    cornerMm: 0.4,
  };
  return isPlain ? [label] : [ground, label];
}

/** Numbers with their codes, in as many columns as the width holds. */
export function sectionKey(wires: readonly SectionWire[], roomMm: number): Drawn {
  const texts = wires.map(({ number, code }) => `${number} ${code}`);
  const widest = Math.max(...texts.map((text) => measureTextMm(text, CAP_MM.fine, 600))) + 3;
  const columnCount = Math.max(1, Math.floor(roomMm / widest));
  const columnMm = roomMm / columnCount;
  return {
    marks: texts.map((text, i) =>
      textMark(
        text,
        (i % columnCount) * columnMm,
        CAP_MM.fine + Math.floor(i / columnCount) * 3.3,
        { ...TEXT_STYLE.fine, weight: 600, colour: "ink" },
      ),
    ),
    widthMm: roomMm,
    heightMm: Math.ceil(texts.length / columnCount) * 3.3 + 1,
  };
}
