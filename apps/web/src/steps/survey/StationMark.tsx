import type { SurveyStation } from "@copperwright/engine/scenes";
import type { ReactNode } from "react";
import type { SurveyView } from "./surveyAnswers.ts";
import { useStationHand } from "./useStationHand.ts";

export type Shift = { readonly id: string; readonly dxMm: number; readonly dyMm: number };

type StationMarkProps = {
  readonly station: SurveyStation;
  readonly view: SurveyView;
  readonly isChosen: boolean;
  readonly shift: Shift | null;
  readonly onShift: (shift: Shift | null) => void;
  readonly onPick: (at: { x: number; y: number }) => void;
};

/** A station: dragged, or moved with the arrows; its words stand where there is room for them. */
export function StationMark(props: StationMarkProps): ReactNode {
  const { station, isChosen, shift } = props;
  const hand = useStationHand(props);
  const { at, label, leader, name, holds } = station;
  const [dx, dy] = [shift?.dxMm ?? 0, shift?.dyMm ?? 0];
  return (
    <g
      data-hand="station"
      data-id={station.id}
      role="button"
      tabIndex={0}
      className={isChosen ? "survey-station chosen" : "survey-station"}
      aria-label={`station ${name}${holds === "" ? "" : `, with ${holds}`}. Arrows move it`}
      aria-pressed={isChosen}
      transform={`translate(${dx} ${dy})`}
      {...hand}
    >
      {leader !== null && (
        <line
          className="station-leader"
          x1={leader.a.x}
          y1={leader.a.y}
          x2={leader.b.x}
          y2={leader.b.y}
        />
      )}
      <circle cx={at.xMm} cy={at.yMm} r="5.6" fill="transparent" />
      <circle cx={at.xMm} cy={at.yMm} r={isChosen ? 2.8 : 2.1} className="station-ring" />
      {label !== null && (
        <>
          <text className="station-name" x={label.xMm} y={label.yMm + 3.2}>
            {name}
          </text>
          <text className="station-holds" x={label.xMm} y={label.yMm + 7.4}>
            {holds}
          </text>
        </>
      )}
      {label === null && isChosen && (
        <text className="station-name" x={at.xMm + 4} y={at.yMm - 3.4}>
          {name}
        </text>
      )}
    </g>
  );
}
