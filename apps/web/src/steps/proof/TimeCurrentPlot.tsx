import type { TimeCurrent } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useId } from "react";
import { logScale } from "../try/logScale.ts";
import { timeText } from "../try/timeText.ts";
import { PlotNames } from "./PlotNames.tsx";
import {
  areaPath,
  bandPath,
  currentTicks,
  linePath,
  type PlotFrame,
  plotFrame,
} from "./plotShapes.ts";

type PlotProps = {
  readonly plot: TimeCurrent;
  /** Wire whose curve is told; null: the lowest. */
  readonly wire: string | null;
  readonly widthPx: number;
  readonly heightPx: number;
};

/** One fuse against its wires on logarithmic paper: the band it opens in, how long each make may carry how much, and where the wire loses. */
export function TimeCurrentPlot({ plot, wire, widthPx, heightPx }: PlotProps): ReactNode {
  const frame = plotFrame(plot.axes, widthPx, heightPx);
  const clip = useId();
  const told =
    plot.wires.find(({ wires }) => wire !== null && wires.includes(wire)) ?? plot.wires[0];
  return (
    <svg
      className="proof-plot"
      width={widthPx}
      height={heightPx}
      role="img"
      aria-label={plotWords(plot)}
    >
      <defs>
        <clipPath id={clip}>
          <rect
            x={frame.left}
            y={frame.top}
            width={frame.right - frame.left}
            height={frame.bottom - frame.top}
          />
        </clipPath>
        <pattern
          id={`${clip}h`}
          width="8"
          height="8"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(45)"
        >
          <line x1="0" y1="0" x2="0" y2="8" stroke="var(--stop)" strokeWidth="2.4" />
        </pattern>
      </defs>
      <Paper plot={plot} frame={frame} />
      <g clipPath={`url(#${clip})`}>
        <path d={bandPath(frame, plot)} className="proof-band" />
        {plot.danger.map((region) => (
          <path
            key={`${region.makeId} ${region.fromA}`}
            d={areaPath(frame, region.lower, region.upper)}
            fill={`url(#${clip}h)`}
          />
        ))}
        <BandEdges plot={plot} frame={frame} />
        {plot.wires.map((curve) => (
          <path
            key={`${curve.makeId} ${curve.onlyTouched}`}
            d={linePath(frame, curve.points)}
            className={curve === told ? "proof-curve told" : "proof-curve"}
          />
        ))}
      </g>
      <Currents plot={plot} frame={frame} />
      <PlotNames plot={plot} frame={frame} told={told} />
    </svg>
  );
}

function plotWords({ fuse, ratingA, danger, wires }: TimeCurrent): string {
  const loses =
    danger.length === 0
      ? "it opens before every wire it guards is harmed"
      : danger
          .map(
            ({ fromA, toA, makeId }) =>
              `from ${printQuantity(fromA, "A")} to ${printQuantity(toA, "A")} a wire ${makeId} may be harmed first`,
          )
          .join("; ");
  return `${fuse}, ${printQuantity(ratingA, "A")}, time against current with ${wires.length} kinds of wire: ${loses}`;
}

/** Ticks, lines and figures of both axes. */
function Paper({ plot, frame }: { plot: TimeCurrent; frame: PlotFrame }): ReactNode {
  const { left, right, top, bottom, x, y, widthPx } = frame;
  const { timeFromS, timeToS } = plot.axes;
  const ticks = currentTicks(plot.axes, widthPx);
  return (
    <g>
      {logScale(timeFromS, timeToS).decades.map((timeS) => (
        <g key={timeS}>
          <line x1={left} x2={right} y1={y(timeS)} y2={y(timeS)} stroke="var(--hair)" />
          <text x={left - 8} y={y(timeS) + 5} textAnchor="end">
            {timeS < 0.05 ? timeText(timeS) : `${printNumber(timeS, timeS < 0.5 ? 1 : 0)}\u00a0s`}
          </text>
        </g>
      ))}
      {ticks.map((currentA, k) => (
        <g key={currentA}>
          <line x1={x(currentA)} x2={x(currentA)} y1={top} y2={bottom} stroke="var(--hair)" />
          <text
            x={x(currentA)}
            y={bottom + 20}
            textAnchor={k === ticks.length - 1 ? "end" : "middle"}
          >
            {printNumber(currentA, currentA < 1 ? 1 : 0)}
            {k === ticks.length - 1 && "\u00a0A"}
          </text>
        </g>
      ))}
      <line x1={left} x2={right} y1={bottom} y2={bottom} stroke="var(--ink)" strokeWidth="1.5" />
    </g>
  );
}

/** What is published of the band's edges full, what is only the usual reading dashed. */
function BandEdges({ plot, frame }: { plot: TimeCurrent; frame: PlotFrame }): ReactNode {
  return [plot.band.fastest, plot.band.slowest].map((edge, k) => {
    const last = edge.findLastIndex(({ published }) => published);
    return (
      <g key={k} fill="none" stroke="var(--ink)" strokeWidth="1.5">
        <path d={linePath(frame, edge.slice(0, last + 1))} />
        <path d={linePath(frame, edge.slice(Math.max(0, last)))} strokeDasharray="6 4" />
      </g>
    );
  });
}

const KINDS: Readonly<Record<string, string>> = {
  "largest load": "load",
  "short at the fuse": "short here",
  "least short, battery full": "far short",
  "least short, battery weak and cold": "far short, weak",
};
const APART_PX = 17;
/** Narrower than this, the currents are told below the plot. */
export const ROOMY_PX = 520;

export const currentWords = ({ kind, currentA }: TimeCurrent["currents"][number]): string =>
  `${KINDS[kind] ?? kind} ${printQuantity(currentA, "A")}`;

/** Currents that can really flow, as marks at the foot with their names upright. */
function Currents({ plot, frame }: { plot: TimeCurrent; frame: PlotFrame }): ReactNode {
  const { x, bottom, top } = frame;
  let lastX = -Infinity;
  return plot.currents.map(({ kind, currentA }) => {
    const at = x(currentA);
    const isFree = at - lastX > APART_PX;
    if (isFree) lastX = at;
    return (
      <g key={kind}>
        <line
          x1={at}
          x2={at}
          y1={top}
          y2={bottom}
          stroke="var(--copper)"
          strokeWidth="1.5"
          strokeDasharray="2 3"
        />
        {isFree && frame.widthPx >= ROOMY_PX && (
          <text
            x={at - 4}
            y={bottom - 6}
            transform={`rotate(-90 ${at - 4} ${bottom - 6})`}
            className="proof-current"
          >
            {currentWords({ kind, currentA, pin: null })}
          </text>
        )}
      </g>
    );
  });
}
