import { LINE_MM } from "../lineWidth.ts";
import { type Mark, point, type Stroke } from "../scene.ts";
import { type ChannelNet, isTurning } from "./channelTracks.ts";

export interface ChannelLine extends ChannelNet {
  readonly alwaysLive: boolean;
}

/** Half of the gap an upright leaves where it crosses a line it does not join. */
const CROSSING_MM = 0.9;

/** Lines of one channel: level from the left, up or down on the net's own track, level to the right; dots where a net parts. */
export function channelMarks(
  lines: readonly ChannelLine[],
  leftMm: number,
  rightMm: number,
  trackXOf: (key: string) => number,
): Mark[] {
  return lines.flatMap((line) => {
    const stroke: Stroke = {
      widthMm: line.alwaysLive ? 1 : LINE_MM.symbol,
      colour: "ink",
      cap: "round",
    };
    const level = (fromMm: number, toMm: number, yMm: number): Mark => ({
      kind: "line",
      from: point(fromMm, yMm),
      to: point(toMm, yMm),
      stroke,
    });
    if (!isTurning(line)) return [level(leftMm, rightMm, line.leftYMm)];
    const xMm = trackXOf(line.key);
    const uprights = uprightPieces(line, lines, xMm, trackXOf).map(
      ([fromMm, toMm]): Mark => ({
        kind: "line",
        from: point(xMm, fromMm),
        to: point(xMm, toMm),
        stroke,
      }),
    );
    return [
      level(leftMm, xMm, line.leftYMm),
      ...uprights,
      ...line.rightYsMm.map((yMm) => level(xMm, rightMm, yMm)),
      ...partings(line).map(
        (yMm): Mark => ({
          kind: "circle",
          centre: point(xMm, yMm),
          radiusMm: line.alwaysLive ? 1.1 : 0.9,
          fill: "ink",
        }),
      ),
    ];
  });
}

/** Levels at which three ways meet on the upright: all but its two ends, and an end where the feed passes straight on. */
function partings(line: ChannelLine): number[] {
  const levels = [line.leftYMm, ...line.rightYsMm];
  const topMm = Math.min(...levels);
  const bottomMm = Math.max(...levels);
  const isEnd = (yMm: number): boolean => yMm - topMm < 1e-6 || bottomMm - yMm < 1e-6;
  const isShared = (yMm: number): boolean =>
    levels.filter((each) => Math.abs(each - yMm) < 1e-6).length > 1;
  return [...new Set(levels)].filter((yMm) => !isEnd(yMm) || isShared(yMm));
}

/** The upright cut where levels of other nets cross it. */
function uprightPieces(
  line: ChannelLine,
  lines: readonly ChannelLine[],
  xMm: number,
  trackXOf: (key: string) => number,
): [number, number][] {
  const levels = [line.leftYMm, ...line.rightYsMm];
  const topMm = Math.min(...levels);
  const bottomMm = Math.max(...levels);
  const crossed = lines
    .filter((other) => other !== line)
    .flatMap((other) => {
      if (!isTurning(other)) return [other.leftYMm];
      return xMm < trackXOf(other.key) ? [other.leftYMm] : other.rightYsMm;
    })
    .filter((yMm) => yMm > topMm && yMm < bottomMm)
    .sort((a, b) => a - b);
  const pieces: [number, number][] = [];
  let fromMm = topMm;
  for (const yMm of crossed) {
    // Near a turn or a parting of its own the gap is narrower, so that the line is never parted from itself there.
    const nearestMm = Math.min(...levels.map((level) => Math.abs(level - yMm)));
    const halfMm = Math.min(CROSSING_MM, nearestMm / 2);
    if (yMm - halfMm > fromMm) pieces.push([fromMm, yMm - halfMm]);
    fromMm = Math.max(fromMm, yMm + halfMm);
  }
  if (bottomMm > fromMm) pieces.push([fromMm, bottomMm]);
  return pieces;
}
