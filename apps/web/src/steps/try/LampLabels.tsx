import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import type { SidePicture } from "./worker/trySide.ts";
import type { LampView } from "./worker/tryView.ts";

interface Label {
  readonly id: string;
  readonly x: number;
  readonly y: number;
  readonly lines: readonly { readonly text: string; readonly isDark: boolean }[];
}

const TOP_MM = 4.2;
const LINE_MM = 4.5;
/** A letter of the bold text is about so wide. */
const LETTER_MM = 2.12;
const GAP_MM = 3.5;
const MOST_LINES = 4;
const MOST_LETTERS = 22;
/** A change of light the eye would see is told. */
const TOLD_PERCENT = 4;

type LampLabelsProps = {
  readonly lamps: readonly LampView[];
  readonly before: readonly LampView[] | null;
  readonly side: SidePicture;
};

/** The figure beside the light: one block a station, in the band above the machine, tied to it by a line. */
export function LampLabels({ lamps, before, side }: LampLabelsProps): ReactNode {
  const { widthMm } = side.picture;
  // Full names with what was; short names; short names alone.
  const ways = [
    labelsOf(lamps, before, side.stations, MOST_LETTERS),
    labelsOf(lamps, before, side.stations, 0),
  ] as const;
  const labels = ways.find((one) => fits(one, widthMm)) ?? labelsOf(lamps, null, side.stations, 0);
  return (
    <g className="try-labels" pointerEvents="none">
      {spread(labels, widthMm).map(({ label, left }) => {
        const foot = TOP_MM + LINE_MM * (label.lines.length - 1) + 1.4;
        return (
          <g key={label.id}>
            <path
              d={`M${left + 1} ${foot}V${foot + 1.6}L${label.x} ${label.y - 1.5}`}
              fill="none"
              stroke="var(--ink2)"
              strokeWidth="0.25"
            />
            {label.lines.map(({ text, isDark }, k) => (
              <text
                key={text}
                x={left}
                y={TOP_MM + LINE_MM * k}
                className={isDark ? "try-label dark" : "try-label"}
              >
                {text}
              </text>
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
  stations: SidePicture["stations"],
  mostLetters: number,
): readonly Label[] {
  return stations.flatMap(({ id, xMm, yMm }) => {
    const own = lamps.filter(({ station, lit, expected }) => station === id && (lit || expected));
    if (own.length === 0) return [];
    const isMore = own.length > MOST_LINES;
    const lines = own
      .slice(0, isMore ? MOST_LINES - 1 : MOST_LINES)
      .map((lamp) => lineOf(lamp, before, mostLetters));
    const more = { text: `and ${own.length - MOST_LINES + 1} lamps more`, isDark: false };
    return [{ id, x: xMm, y: yMm, lines: isMore ? [...lines, more] : lines }];
  });
}

function lineOf(
  lamp: LampView,
  before: readonly LampView[] | null,
  mostLetters: number,
): Label["lines"][number] {
  const { part, filament, name, lightPercent, lit, expected } = lamp;
  const old = before?.find((one) => one.part === part && one.filament === filament);
  const pin = filament.split("-")[0] ?? filament;
  const word = name.length > mostLetters ? `${part} ${pin}` : name;
  if (!lit) return { text: `${word} dark`, isDark: true };
  const isChanged = old !== undefined && Math.abs(old.lightPercent - lightPercent) > TOLD_PERCENT;
  const was = isChanged ? `, was ${printQuantity(old.lightPercent, "%")}` : "";
  const stray = expected === false ? ", unasked" : "";
  return { text: `${word} ${printQuantity(lightPercent, "%")}${was}${stray}`, isDark: false };
}

const wideMm = ({ lines }: Label): number =>
  LETTER_MM * Math.max(...lines.map(({ text }) => text.length));

const fits = (labels: readonly Label[], widthMm: number): boolean =>
  labels.reduce((sumMm, label) => sumMm + wideMm(label) + GAP_MM, 0) <= widthMm;

/** Blocks in one band, each as near over its station as its neighbours let it. */
function spread(
  labels: readonly Label[],
  widthMm: number,
): readonly { readonly label: Label; readonly left: number }[] {
  const sorted = [...labels].sort((a, b) => a.x - b.x);
  const lefts: number[] = [];
  sorted.forEach((label, k) => {
    const before = sorted[k - 1];
    const free = before === undefined ? 0 : lefts[k - 1]! + wideMm(before) + GAP_MM;
    lefts.push(Math.max(free, label.x - wideMm(label) / 2));
  });
  // Whatever ran over the right edge pushes its neighbours back.
  let edge = widthMm;
  for (let k = sorted.length - 1; k >= 0; k--) {
    lefts[k] = Math.min(lefts[k]!, edge - wideMm(sorted[k]!));
    edge = lefts[k]! - GAP_MM;
  }
  return sorted.map((label, k) => ({ label, left: lefts[k]! })).filter(({ left }) => left >= -1);
}
