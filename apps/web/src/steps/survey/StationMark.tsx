import type { SurveyStation } from "@copperwright/engine/scenes";
import type { ReactNode } from "react";
import type { SurveyView } from "./surveyAnswers.ts";
import { useStationHand } from "./useStationHand.ts";

export type Shift = { readonly id: string; readonly dxMm: number; readonly dyMm: number };

/** On a narrow screen the machine is small, and large rings would hide it and each other. */
const NARROW_MM = 150;

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
  const { at, label, name, holds } = station;
  const ringMm = props.view.widthMm < NARROW_MM ? 1.3 : 2.1;
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
      <circle cx={at.xMm} cy={at.yMm} r="5.6" fill="transparent" />
      <circle
        cx={at.xMm}
        cy={at.yMm}
        r={isChosen ? ringMm * 1.35 : ringMm}
        className="station-ring"
      />
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
