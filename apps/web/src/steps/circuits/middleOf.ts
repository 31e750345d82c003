import type { DiagramView } from "./circuitsAnswers.ts";

type Points = DiagramView["wires"][number]["points"];
type At = Points[number];

/** The middle of a wire as drawn, half its length along its longest piece, and the ends of that piece; null: not drawn. */
export function middleOf(
  wires: DiagramView["wires"],
  id: string,
): { readonly at: At; readonly from: At; readonly to: At } | null {
  const pieces = wires.filter((one) => one.id === id && one.points.length > 1);
  const longest = [...pieces].sort((a, b) => lengthMm(b.points) - lengthMm(a.points))[0];
  if (longest === undefined) return null;
  const { points } = longest;
  let leftMm = lengthMm(points) / 2;
  for (let i = 1; i < points.length; i++) {
    const [a, b] = [points[i - 1]!, points[i]!];
    const legMm = Math.hypot(b.xMm - a.xMm, b.yMm - a.yMm);
    if (leftMm <= legMm && legMm > 0) {
      const share = leftMm / legMm;
      const at = {
        xMm: a.xMm + (b.xMm - a.xMm) * share,
        yMm: a.yMm + (b.yMm - a.yMm) * share,
      };
      return { at, from: points[0]!, to: points.at(-1)! };
    }
    leftMm -= legMm;
  }
  return { at: points[0]!, from: points[0]!, to: points.at(-1)! };
}

const lengthMm = (points: Points): number =>
  points.reduce((sum, at, i) => {
    const before = points[i - 1];
    return before === undefined ? 0 : sum + Math.hypot(at.xMm - before.xMm, at.yMm - before.yMm);
  }, 0);
