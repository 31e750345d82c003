import { LINE_MM, type Mark, type PathStep, type PointMm, point } from "../../drawing/index.ts";
import type { Point } from "../../geometry/index.ts";
import type { SideShape } from "../../layout/index.ts";

/** One line of the machine, pale, so that the loom on it stands out. */
export function inkOutline(shape: SideShape, to: (at: Point) => PointMm): Mark {
  const places = shape.points.map(to);
  const steps = shape.isSmooth ? smooth(places, shape.isClosed) : straight(places, shape.isClosed);
  return {
    kind: "path",
    steps,
    stroke: { widthMm: LINE_MM.leader, colour: "rule" },
    fill: shape.isFilled ? "pale" : undefined,
  };
}

const straight = (places: readonly PointMm[], isClosed: boolean): readonly PathStep[] => [
  ...places.map((to, i): PathStep => ({ pen: i === 0 ? "move" : "line", to })),
  ...(isClosed ? [{ pen: "close" } as const] : []),
];

/** A curve through every point: each piece leaves and arrives along the line between its neighbours (Catmull and Rom, 1974). */
function smooth(places: readonly PointMm[], isClosed: boolean): readonly PathStep[] {
  const count = places.length;
  const at = (i: number): PointMm =>
    isClosed ? places[(i + count) % count]! : places[Math.min(count - 1, Math.max(0, i))]!;
  const pieces = isClosed ? count : count - 1;
  const steps: PathStep[] = [{ pen: "move", to: at(0) }];
  for (let i = 0; i < pieces; i++) {
    const [a, b, c, d] = [at(i - 1), at(i), at(i + 1), at(i + 2)];
    steps.push({
      pen: "curve",
      control1: point(b.xMm + (c.xMm - a.xMm) / 6, b.yMm + (c.yMm - a.yMm) / 6),
      control2: point(c.xMm - (d.xMm - b.xMm) / 6, c.yMm - (d.yMm - b.yMm) / 6),
      to: c,
    });
  }
  return isClosed ? [...steps, { pen: "close" }] : steps;
}
