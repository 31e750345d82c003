import type { ReactNode } from "react";
import type { SurveyView } from "./surveyAnswers.ts";
import { usePhotograph } from "./usePhotograph.ts";

const PALE = 0.35;

/** The photograph under the side view, pale; where it is not to be had, its place with the reason. */
export function Photograph({
  photograph,
}: {
  photograph: NonNullable<SurveyView["photograph"]>;
}): ReactNode {
  const shown = usePhotograph(photograph.id);
  const { xMm: x, yMm: y, widthMm: width, heightMm: height } = photograph;
  if (shown.kind === "shown") {
    return (
      <image
        href={shown.address}
        x={x}
        y={y}
        width={width}
        height={height}
        opacity={PALE}
        preserveAspectRatio="none"
      />
    );
  }
  return <rect className="photo-place" x={x} y={y} width={width} height={height} />;
}
