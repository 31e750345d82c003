import { plainMarks } from "./expandMark.ts";
import { textAreaMm } from "./measureTextMm.ts";
import { palettes } from "./palette.ts";
import { polylineSteps } from "./pathText.ts";
import type { AreaMm, Mark, PathStep, PointMm, PrimitiveMark, TextMark } from "./scene.ts";

/** A hair's width: boxes that only touch do not overlap. */
const TOUCH_MM = 0.02;

/** Dots this small are a grid, not ink that hides a letter. */
const GRID_DOT_MM = 0.2;

const overlap = (a: AreaMm, b: AreaMm): boolean =>
  a.xMm + TOUCH_MM < b.xMm + b.widthMm &&
  b.xMm + TOUCH_MM < a.xMm + a.widthMm &&
  a.yMm + TOUCH_MM < b.yMm + b.heightMm &&
  b.yMm + TOUCH_MM < a.yMm + a.heightMm;

const plain = (marks: readonly Mark[]): PrimitiveMark[] => plainMarks(marks, palettes.print);
const texts = (marks: readonly Mark[]): TextMark[] =>
  plain(marks).filter((mark) => mark.kind === "text" && mark.text.trim() !== "") as TextMark[];

/** Pairs of texts that cover each other. */
export function textOverlaps(marks: readonly Mark[]): string[] {
  const flat = plain(marks);
  const boxes = flat.flatMap((mark, at) =>
    mark.kind === "text" ? [{ text: mark.text, box: textAreaMm(mark), at }] : [],
  );
  return boxes.flatMap((under, i) =>
    boxes
      .slice(i + 1)
      .filter((over) => overlap(under.box, over.box))
      .filter((over) => !isPaintedOver(flat, under, over))
      .map((over) => `"${under.text}" over "${over.text}"`),
  );
}

/** Whether what two texts share was painted white after the first and before the second, as round the window of a tile. */
function isPaintedOver(
  flat: readonly Mark[],
  under: { readonly box: AreaMm; readonly at: number },
  over: { readonly box: AreaMm; readonly at: number },
): boolean {
  const left = Math.max(under.box.xMm, over.box.xMm);
  const top = Math.max(under.box.yMm, over.box.yMm);
  const right = Math.min(under.box.xMm + under.box.widthMm, over.box.xMm + over.box.widthMm);
  const bottom = Math.min(under.box.yMm + under.box.heightMm, over.box.yMm + over.box.heightMm);
  return flat.slice(under.at + 1, over.at).some((mark) => {
    if (mark.kind !== "rect" || mark.fill !== "ground") return false;
    const { xMm, yMm, widthMm, heightMm } = mark.area;
    return xMm <= left && yMm <= top && xMm + widthMm >= right && yMm + heightMm >= bottom;
  });
}

/** The letters themselves, without the room for accents and tails. */
function lettersBox(mark: TextMark): AreaMm {
  const box = textAreaMm(mark);
  if (mark.turnDeg) return box;
  return { ...box, yMm: mark.at.yMm - mark.capHeightMm, heightMm: mark.capHeightMm };
}

/** Texts a stroke runs through. */
export function struckTexts(marks: readonly Mark[]): string[] {
  const segments = plain(marks).flatMap(segmentsOf);
  return texts(marks).flatMap((mark) => {
    const box = lettersBox(mark);
    return segments.some(([from, to]) => crosses(from, to, box)) ? [mark.text] : [];
  });
}

/** Texts and strokes that leave an area. */
export function marksOutside(marks: readonly Mark[], area: AreaMm): string[] {
  const inside = ({ xMm, yMm }: PointMm): boolean =>
    xMm > area.xMm - TOUCH_MM &&
    xMm < area.xMm + area.widthMm + TOUCH_MM &&
    yMm > area.yMm - TOUCH_MM &&
    yMm < area.yMm + area.heightMm + TOUCH_MM;
  return plain(marks).flatMap((mark) => {
    if (mark.kind === "text") {
      const { xMm, yMm, widthMm, heightMm } = textAreaMm(mark);
      const isInside = inside({ xMm, yMm }) && inside({ xMm: xMm + widthMm, yMm: yMm + heightMm });
      return isInside ? [] : [mark.text];
    }
    const segments = segmentsOf(mark);
    const isInside = segments.every(([from, to]) => inside(from) && inside(to));
    return isInside ? [] : [`${mark.kind} ${JSON.stringify(segments[0])}`];
  });
}

type Segment = readonly [PointMm, PointMm];

/** Straight pieces of a mark's outline; curves by their chords, circles by their squares' diagonals. */
export function segmentsOf(mark: PrimitiveMark): Segment[] {
  switch (mark.kind) {
    case "text":
      return [];
    case "line":
      return [[mark.from, mark.to]];
    case "polyline":
      return stepSegments(polylineSteps(mark.points, mark.closed ?? false));
    case "path":
      return stepSegments(mark.steps);
    case "rect": {
      const { xMm, yMm, widthMm, heightMm } = mark.area;
      const corners = [
        { xMm, yMm },
        { xMm: xMm + widthMm, yMm },
        { xMm: xMm + widthMm, yMm: yMm + heightMm },
        { xMm, yMm: yMm + heightMm },
      ];
      return mark.stroke ? stepSegments(polylineSteps(corners, true)) : [];
    }
    case "circle": {
      const { centre, radiusMm } = mark;
      if (radiusMm < GRID_DOT_MM) return [];
      const around = Array.from({ length: 16 }, (_, i) => ({
        xMm: centre.xMm + radiusMm * Math.cos((i * Math.PI) / 8),
        yMm: centre.yMm + radiusMm * Math.sin((i * Math.PI) / 8),
      }));
      return stepSegments(polylineSteps(around, true));
    }
  }
}

function stepSegments(steps: readonly PathStep[]): Segment[] {
  const segments: Segment[] = [];
  let startPoint: PointMm | null = null;
  let at: PointMm | null = null;
  for (const step of steps) {
    const to: PointMm | null = step.pen === "close" ? startPoint : step.to;
    if (step.pen === "move") startPoint = step.to;
    else if (at && to) segments.push([at, to]);
    at = to;
  }
  return segments;
}

/** Whether a segment has a point strictly inside a box (clipping by Liang and Barsky). */
function crosses(from: PointMm, to: PointMm, box: AreaMm): boolean {
  const isBeside =
    Math.max(from.xMm, to.xMm) <= box.xMm ||
    Math.min(from.xMm, to.xMm) >= box.xMm + box.widthMm ||
    Math.max(from.yMm, to.yMm) <= box.yMm ||
    Math.min(from.yMm, to.yMm) >= box.yMm + box.heightMm;
  if (isBeside) return false;
  const dx = to.xMm - from.xMm;
  const dy = to.yMm - from.yMm;
  const limits = [
    [-dx, from.xMm - box.xMm - TOUCH_MM],
    [dx, box.xMm + box.widthMm - TOUCH_MM - from.xMm],
    [-dy, from.yMm - box.yMm - TOUCH_MM],
    [dy, box.yMm + box.heightMm - TOUCH_MM - from.yMm],
  ] as const;
  let first = 0;
  let last = 1;
  for (const [p, q] of limits) {
    if (p === 0) {
      if (q <= 0) return false;
    } else if (p < 0) first = Math.max(first, q / p);
    else last = Math.min(last, q / p);
  }
  return first < last;
}
