import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import type { SidePicture } from "./worker/trySide.ts";
import type { LampView } from "./worker/tryView.ts";

/** Radius of a lamp at full light, mm on the drawing. */
const FULL_MM = 13;
const LEAST_MM = 1.6;

type Stations = SidePicture["stations"];

/** Light falls with the square of the distance, so the radius of the glow goes by the root of the light. */
const radiusMm = ({ lightPercent }: LampView): number =>
  Math.max(LEAST_MM, FULL_MM * Math.sqrt(Math.min(1.5, lightPercent / 100)));

/** Every lamp that gives light, as a glow round its station; several at one station stand round it. */
export function LampGlows({
  lamps,
  stations,
}: {
  lamps: readonly LampView[];
  stations: Stations;
}): ReactNode {
  const lit = lamps.filter(({ lit: isLit, lightPercent }) => isLit && lightPercent > 0);
  return (
    <g className="try-glows">
      <defs>
        <radialGradient id="lamp-glow">
          <stop offset="0" stopColor="var(--glow)" stopOpacity="0.95" />
          <stop offset="0.35" stopColor="var(--glow)" stopOpacity="0.5" />
          <stop offset="1" stopColor="var(--glow)" stopOpacity="0" />
        </radialGradient>
      </defs>
      {stations.flatMap(({ id, xMm, yMm }) => {
        const own = lit.filter(({ station }) => station === id);
        return own.map((lamp, k) => {
          const turn = (2 * Math.PI * k) / own.length;
          const apart = own.length > 1 ? 2.2 : 0;
          const [x, y] = [xMm + apart * Math.cos(turn), yMm + apart * Math.sin(turn)];
          return (
            <g key={`${lamp.part} ${lamp.filament}`} pointerEvents="none">
              <circle cx={x} cy={y} r={radiusMm(lamp)} fill="url(#lamp-glow)" />
              <circle
                cx={x}
                cy={y}
                r="0.9"
                fill="var(--glow)"
                stroke="var(--ink)"
                strokeWidth="0.3"
              />
            </g>
          );
        });
      })}
    </g>
  );
}

interface Label {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly lines: readonly { readonly text: string; readonly note: string }[];
}

const LINE_MM = 3.9;
const LETTER_MM = 1.75;
const GAP_MM = 3;
const MOST_LINES = 4;

/** The figure beside the light: one block a station, in a band above or below the machine, tied to it by a line. */
export function LampLabels({
  lamps,
  before,
  side,
}: {
  lamps: readonly LampView[];
  before: readonly LampView[] | null;
  side: SidePicture;
}): ReactNode {
  const { widthMm, heightMm } = side.picture;
  const labels = labelsOf(lamps, before, side.stations);
  const upper = spread(
    labels.filter(({ y }) => y < heightMm * 0.62),
    widthMm,
  );
  return (
    <g className="try-labels" pointerEvents="none">
      {upper.map(({ label, left }) => {
        const top = 4;
        const foot = top + LINE_MM * (2 * label.lines.length - 1) + 2;
        return (
          <g key={label.id}>
            <path
              d={`M${left + 1} ${foot - 1}V${foot + 1}L${label.x} ${label.y - 1.5}`}
              fill="none"
              stroke="var(--ink2)"
              strokeWidth="0.25"
            />
            {label.lines.map(({ text, note }, k) => (
              <g key={text}>
                <text x={left} y={top + LINE_MM * 2 * k} className="try-label">
                  {text}
                </text>
                <text x={left} y={top + LINE_MM * (2 * k + 0.95)} className="try-label-note">
                  {note}
                </text>
              </g>
            ))}
          </g>
        );
      })}
    </g>
  );
}

function labelsOf(
  lamps: readonly LampView[],
  before: readonly LampView[] | null,
  stations: Stations,
): readonly Label[] {
  return stations.flatMap(({ id, xMm, yMm }) => {
    const own = lamps.filter(({ station, lit, expected }) => station === id && (lit || expected));
    if (own.length === 0) return [];
    const lines = own.slice(0, MOST_LINES).map((lamp) => lineOf(lamp, before));
    if (own.length > MOST_LINES) {
      lines[MOST_LINES - 1] = { text: `and ${own.length - MOST_LINES + 1} more lamps`, note: "" };
    }
    return [{ id, x: xMm, y: yMm, lines }];
  });
}

function lineOf(lamp: LampView, before: readonly LampView[] | null): Label["lines"][number] {
  const old = before?.find((one) => one.part === lamp.part && one.filament === lamp.filament);
  const percent = (of: LampView): string => printQuantity(of.lightPercent, "%");
  const name = lamp.name.length > 20 ? lamp.part : lamp.name;
  const volts = lamp.v === null ? "" : printQuantity(Math.abs(lamp.v), "V");
  if (!lamp.lit) return { text: `${name}: dark`, note: `${volts}; it should light` };
  const was = old && percent(old) !== percent(lamp) ? `; ${percent(old)} when well` : "";
  const stray = lamp.expected === false ? "; not asked for" : "";
  return { text: `${name} ${percent(lamp)}`, note: `${volts}${was}${stray}` };
}

/** Blocks in one band, each as near over its station as its neighbours let it. */
function spread(
  labels: readonly Label[],
  widthMm: number,
): readonly { readonly label: Label; readonly left: number }[] {
  const wide = ({ lines }: Label): number =>
    LETTER_MM * Math.max(...lines.flatMap(({ text, note }) => [text.length, note.length * 0.9]));
  const sorted = [...labels].sort((a, b) => a.x - b.x);
  const lefts: number[] = [];
  sorted.forEach((label, k) => {
    const before = sorted[k - 1];
    const free = before === undefined ? 0 : lefts[k - 1]! + wide(before) + GAP_MM;
    lefts.push(Math.max(free, label.x - wide(label) / 2));
  });
  // Whatever ran over the right edge pushes its neighbours back.
  let edge = widthMm;
  for (let k = sorted.length - 1; k >= 0; k--) {
    lefts[k] = Math.min(lefts[k]!, edge - wide(sorted[k]!));
    edge = lefts[k]! - GAP_MM;
  }
  return sorted.map((label, k) => ({ label, left: lefts[k]! })).filter(({ left }) => left >= -1);
}
