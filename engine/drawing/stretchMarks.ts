import { plainMarks, wireSubject } from "./expandMark.ts";
import type { Palette } from "./palette.ts";
import { arcSteps } from "./pathText.ts";
import type { Mark, PathStep, PointMm, PrimitiveMark } from "./scene.ts";

/**
 * Marks stretched about the top left corner of the page, by one factor across and another down: what undoes the error of a
 * printer. Letters keep their shape, circles become the ellipses the printer turns into circles.
 */
export function stretchMarks(
  marks: readonly Mark[],
  ratios: { readonly acrossRatio: number; readonly downRatio: number },
  palette: Palette,
): Mark[] {
  const { acrossRatio, downRatio } = ratios;
  if (acrossRatio === 1 && downRatio === 1) return [...marks];
  const place = ({ xMm, yMm }: PointMm): PointMm => ({
    xMm: xMm * acrossRatio,
    yMm: yMm * downRatio,
  });
  return marks.map((mark): Mark => {
    if (mark.kind === "group") return { ...mark, marks: stretchMarks(mark.marks, ratios, palette) };
    if (mark.kind === "wire" || mark.kind === "symbol") {
      const marks = plainMarks([mark], palette).map((plain) => stretched(plain, place));
      return {
        kind: "group",
        ...(mark.kind === "wire" ? wireSubject(mark) : { id: mark.id }),
        marks,
      };
    }
    return stretched(mark, place);
  });
}

function stretched(mark: PrimitiveMark, place: (at: PointMm) => PointMm): PrimitiveMark {
  switch (mark.kind) {
    case "line":
      return { ...mark, from: place(mark.from), to: place(mark.to) };
    case "polyline":
      return { ...mark, points: mark.points.map(place) };
    case "path":
      return { ...mark, steps: mark.steps.map((step) => stretchedStep(step, place)) };
    case "circle": {
      const { centre, radiusMm, stroke, fill } = mark;
      const steps = arcSteps(centre, radiusMm, 0, 360).map((step) => stretchedStep(step, place));
      return { kind: "path", steps: [...steps, { pen: "close" }], stroke, fill };
    }
    case "rect": {
      const { xMm, yMm } = place(mark.area);
      const { xMm: widthMm, yMm: heightMm } = place({
        xMm: mark.area.widthMm,
        yMm: mark.area.heightMm,
      });
      return { ...mark, area: { xMm, yMm, widthMm, heightMm } };
    }
    case "text":
      return { ...mark, at: place(mark.at) };
  }
}

function stretchedStep(step: PathStep, place: (at: PointMm) => PointMm): PathStep {
  if (step.pen === "close") return step;
  if (step.pen !== "curve") return { ...step, to: place(step.to) };
  const { control1, control2, to } = step;
  return { pen: "curve", control1: place(control1), control2: place(control2), to: place(to) };
}
