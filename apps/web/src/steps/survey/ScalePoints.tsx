import { type PointerEvent, type ReactNode, useState } from "react";
import { ask } from "../../engine/engineClient.ts";
import { LengthField } from "../../entry/LengthField.tsx";
import { say } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import { jobMm, type PlaceMm, sceneMm } from "./sceneMm.ts";
import type { SurveyView } from "./surveyAnswers.ts";

/** Two taps on the photograph, then how far apart the two points are on the machine: that is its scale. */
export function ScalePoints({
  view,
  onScaled,
}: {
  view: SurveyView;
  onScaled: () => void;
}): ReactNode {
  const [points, setPoints] = useState<readonly PlaceMm[]>([]);
  const tap = (event: PointerEvent<SVGRectElement>): void => {
    if (points.length < 2) setPoints([...points, sceneMm(event.currentTarget, event)]);
    say(points.length === 0 ? "Now the second point." : "Now how far apart they are.");
  };
  const take = async (apartMm: number): Promise<void> => {
    const [a, b] = points.map((point) => jobMm(view, point));
    const operation = a && b ? await ask("surveyScale", { a, b, apartMm }) : null;
    if (operation === null) return say("The two points are one. Tap two that lie apart.");
    await edit("scale the photograph", operation);
    onScaled();
  };
  const [a, b] = points;
  return (
    <g data-hand="scale">
      <rect
        x="0"
        y="0"
        width={view.widthMm}
        height={view.heightMm}
        fill="transparent"
        className="scale-ground"
        onPointerUp={tap}
      />
      {points.map(({ xMm, yMm }) => (
        <path
          key={`${xMm} ${yMm}`}
          className="scale-point"
          d={`M${xMm - 3} ${yMm}h6M${xMm} ${yMm - 3}v6`}
        />
      ))}
      {a && b && (
        <>
          <line className="scale-line" x1={a.xMm} y1={a.yMm} x2={b.xMm} y2={b.yMm} />
          <foreignObject
            x={(a.xMm + b.xMm) / 2 - 25}
            y={(a.yMm + b.yMm) / 2 + 3}
            width="50"
            height="26"
          >
            <div className="scale-entry">
              <LengthField
                label="apart on the machine"
                valueMm={null}
                onLength={(lengthMm) => void take(lengthMm)}
              />
            </div>
          </foreignObject>
        </>
      )}
    </g>
  );
}
