import type { FaultStory, WireHistory } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { logScale } from "./logScale.ts";
import { TimeFlag } from "./TimeFlag.tsx";
import { timeText } from "./timeText.ts";

const HEIGHT_PX = 196;
const FOOT_PX = 26;
const TOP_PX = 34;
const SIDE_PX = 14;
/** The temperature begins so far up its range, so that it keeps off a current of nought. */
const RAISED_RATIO = 0.22;

type PlotProps = {
  readonly story: FaultStory;
  readonly labelOf: (wire: string) => string;
  readonly wire: WireHistory | undefined;
  readonly widthPx: number;
  readonly atS: number;
};

/** Current, temperature and the fuse's band over the logarithm of time, each named on its own line. */
export function TimePlot({ story, wire, widthPx, atS, labelOf }: PlotProps): ReactNode {
  const axis = logScale(story.fromS, story.toS);
  const x = (timeS: number): number =>
    SIDE_PX + (widthPx - 2 * SIDE_PX) * axis.ratioOf(Math.max(timeS, story.fromS));
  const bottom = HEIGHT_PX - FOOT_PX;
  return (
    <svg
      className="try-plot"
      width={widthPx}
      height={HEIGHT_PX}
      role="group"
      aria-label="Time since the fault, logarithmic"
    >
      <defs>
        <pattern
          id="hatch-try"
          width="7"
          height="7"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" y1="0" x2="0" y2="7" stroke="var(--copper)" strokeWidth="1.6" />
        </pattern>
      </defs>
      <Band story={story} x={x} bottom={bottom} />
      {axis.decades.map((timeS) => (
        <g key={timeS}>
          <line x1={x(timeS)} x2={x(timeS)} y1={TOP_PX} y2={bottom} stroke="var(--hair)" />
          <text
            x={x(timeS)}
            y={HEIGHT_PX - 8}
            textAnchor={anchorAt(x(timeS), widthPx)}
            className="try-tick"
          >
            {tickText(timeS)}
          </text>
        </g>
      ))}
      <line
        x1={SIDE_PX}
        x2={widthPx - SIDE_PX}
        y1={bottom}
        y2={bottom}
        stroke="var(--ink)"
        strokeWidth="1.5"
      />
      {wire !== undefined && (
        <Curves wire={wire} x={x} bottom={bottom} label={labelOf(wire.wire)} toS={story.toS} />
      )}
      <TimeFlag axis={axis} atS={atS} x={x} widthPx={widthPx} bottom={bottom} />
    </svg>
  );
}

/** Decades from a second up are told in seconds, so that each is ten times the one before it to the eye too. */
const tickText = (timeS: number): string =>
  timeS < 0.05 ? timeText(timeS) : `${printNumber(timeS, timeS < 0.5 ? 1 : 0)}\u00a0s`;

const anchorAt = (at: number, widthPx: number): "start" | "middle" | "end" =>
  at < 30 ? "start" : at > widthPx - 40 ? "end" : "middle";

type Scaled = { readonly x: (timeS: number) => number; readonly bottom: number };

function Band({ story, x, bottom }: Scaled & { story: FaultStory }): ReactNode {
  const { first, toS } = story;
  if (first === null || first.opensMinS === null) return null;
  const left = x(first.opensMinS);
  const right = x(first.opensMaxS ?? toS);
  const isNarrow = right - left < 190;
  const textX = isNarrow ? Math.max(4, left - 6) : left + 8;
  return (
    <g>
      <rect
        x={left}
        y={TOP_PX}
        width={Math.max(2, right - left)}
        height={bottom - TOP_PX}
        className="try-band"
      />
      <rect
        x={left}
        y={bottom - 9}
        width={Math.max(2, right - left)}
        height={9}
        fill="url(#hatch-try)"
      />
      <text
        x={textX}
        y={bottom - 15}
        textAnchor={isNarrow && left > 200 ? "end" : "start"}
        className="try-band-text"
      >
        {first.part} opens in this band
      </text>
    </g>
  );
}

type CurvesProps = Scaled & {
  readonly wire: WireHistory;
  readonly label: string;
  readonly toS: number;
};

/** Current and temperature each on its own scale, both named on the curve; no second axis of figures to mix up. */
function Curves({ wire, x, bottom, label, toS }: CurvesProps): ReactNode {
  const { limits, points, currents } = wire;
  const high = bottom - TOP_PX - 24;
  const mostC = Math.max(limits.shortC, wire.peakC);
  const leastC = wire.startC - RAISED_RATIO * (mostC - wire.startC);
  const yC = (c: number): number => bottom - (high * (c - leastC)) / (mostC - leastC);
  const mostA = Math.max(...currents.map(({ currentA }) => currentA));
  const yA = (a: number): number => bottom - high * 0.86 * (a / mostA);
  const limit = limitSteps(limits);
  const first = currents[0]!;
  const over = wire.overLimitAtS;
  return (
    <g fill="none">
      <path
        d={steps(limit, x, yC, toS)}
        stroke="var(--stop)"
        strokeWidth="1.5"
        strokeDasharray="6 4"
      />
      <path
        d={steps(
          currents.map(({ fromS, currentA }) => [fromS, currentA] as const),
          x,
          yA,
          toS,
        )}
        stroke="var(--copper)"
        strokeWidth="2.5"
      />
      <path
        d={`M${points.map(({ timeS, temperatureC }) => `${x(timeS)} ${yC(temperatureC)}`).join("L")}`}
        stroke="var(--ink)"
        strokeWidth="2"
      />
      {over !== null && (
        <circle
          cx={x(over)}
          cy={yC(points.find(({ timeS }) => timeS >= over)!.temperatureC)}
          r="5"
          fill="var(--stop)"
        />
      )}
      <text
        x={x(Math.min(limits.shortS, toS)) - 6}
        y={yC(limits.shortC) - 6}
        textAnchor="end"
        className="try-limit-text"
      >
        insulation limit {printQuantity(limits.shortC, "C")}
      </text>
      <text x={SIDE_PX + 6} y={yA(first.currentA) - 6} className="try-current-text">
        {printQuantity(first.currentA, "A")} through wire {label}
      </text>
      <text
        x={x(wire.peakAtS)}
        y={Math.min(bottom - 6, yC(wire.peakC) - 8)}
        textAnchor={wire.peakAtS > Math.sqrt(points[0]!.timeS * toS) ? "end" : "start"}
        className="try-heat-text"
      >
        wire {label} from {printQuantity(wire.startC, "C")} to {printQuantity(wire.peakC, "C")}
      </text>
    </g>
  );
}

const limitSteps = (limits: WireHistory["limits"]): readonly (readonly [number, number])[] => [
  [0, limits.shortC],
  [limits.shortS, limits.longC],
  [limits.longS, limits.foreverC],
];

function steps(
  from: readonly (readonly [number, number])[],
  x: (timeS: number) => number,
  y: (value: number) => number,
  toS: number,
): string {
  const shown = from.filter(([timeS]) => timeS < toS);
  return shown
    .map(([timeS, value], k) => {
      const next = shown[k + 1]?.[0] ?? toS;
      return `${k === 0 ? "M" : "L"}${x(timeS)} ${y(value)}L${x(next)} ${y(value)}`;
    })
    .join("");
}
