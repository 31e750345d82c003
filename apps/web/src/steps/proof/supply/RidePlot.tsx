import type { SupplyAnswer } from "@copperwright/engine";
import { printNumber } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useWidthPx } from "../../../drawing/useWidthPx.ts";
import { axisOf, linePath, type PlotPaper, plotPaper, spreadApart } from "./linePlot.ts";
import { PlotGround } from "./PlotGround.tsx";
import { rideWord } from "./topicAnswer.ts";

export type Ride = SupplyAnswer["rides"][number];

const MINUTE_S = 60;
const NARROW_PX = 520;
const LEAST_SPAN_PERCENT = 10;
const NAME_PITCH_PX = 20;
const NAME_PX = 104;

type RidePlotProps = {
  readonly rides: readonly Ride[];
  /** The same rides without what somebody thinks of. */
  readonly before: readonly Ride[];
};

/** Charge of the battery over a ride, each curve named where it ends. */
export function RidePlot({ rides, before }: RidePlotProps): ReactNode {
  const { box, widthPx } = useWidthPx();
  return (
    <div ref={box} className="supply-plot">
      {widthPx > 0 && <Drawn rides={rides} before={before} widthPx={widthPx} />}
    </div>
  );
}

const pointsOf = ({ rows, durationS, endPercent }: Ride) => [
  ...rows.map(({ timeS, chargePercent }) => [timeS / MINUTE_S, chargePercent] as const),
  [durationS / MINUTE_S, endPercent] as const,
];

function Drawn({
  rides,
  before,
  widthPx,
}: RidePlotProps & { readonly widthPx: number }): ReactNode {
  const all = [...rides, ...before];
  const isNarrow = widthPx < NARROW_PX;
  const lowest = Math.min(...all.map(({ leastPercent }) => leastPercent));
  const highest = Math.max(...all.flatMap((ride) => pointsOf(ride).map(([, percent]) => percent)));
  const minutes = Math.max(...all.map(({ durationS }) => durationS)) / MINUTE_S;
  const up = axisOf(Math.max(0, Math.min(lowest, highest - LEAST_SPAN_PERCENT)), highest, 7);
  const paper = plotPaper(
    axisOf(0, minutes, isNarrow ? 4 : 8),
    up,
    widthPx - NAME_PX,
    isNarrow ? 280 : 320,
  );
  const words = rides.map(
    ({ ride, endPercent }) => `${rideWord(ride)} ${printNumber(endPercent, 0)} %`,
  );
  return (
    <svg
      width={widthPx}
      height={paper.heightPx}
      role="img"
      aria-label={`Charge of the battery over the ride, at its end: ${words.join(", ")}`}
    >
      <PlotGround paper={paper} acrossName="minutes ridden" upName="charge, %" />
      {before.map((ride) => (
        <path key={ride.ride} d={linePath(paper, pointsOf(ride))} className="supply-was" />
      ))}
      {rides.map((ride, k) => (
        <path
          key={ride.ride}
          d={linePath(paper, pointsOf(ride))}
          className={`supply-charge line-${k % 4}`}
        />
      ))}
      <EndNames rides={rides} words={words} paper={paper} />
    </svg>
  );
}

function EndNames({
  rides,
  words,
  paper,
}: {
  readonly rides: readonly Ride[];
  readonly words: readonly string[];
  readonly paper: PlotPaper;
}): ReactNode {
  const ends = rides.map(({ endPercent }) => paper.y(endPercent));
  /** A ride that ends well before the paper does has room for its name there. */
  const isFree = (endX: number): boolean => endX < paper.right - NAME_PX;
  const placed = spreadApart(ends, NAME_PITCH_PX, [paper.top, paper.bottom]);
  return (
    <g className="supply-names">
      {rides.map((ride, k) => {
        const endX = paper.x(ride.durationS / MINUTE_S);
        return (
          <g key={ride.ride}>
            {!isFree(endX) && (
              <path
                d={`M${endX} ${ends[k]}L${paper.right + 6} ${placed[k]}`}
                className="supply-leader"
              />
            )}
            <text
              x={isFree(endX) ? endX + 6 : paper.right + 9}
              y={(isFree(endX) ? ends[k]! : placed[k]!) + 5}
            >
              {words[k]}
            </text>
          </g>
        );
      })}
    </g>
  );
}
