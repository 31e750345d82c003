import type { Job, Operation } from "@copperwright/engine";
import type { BoardHold, BoardPoint, BoardView } from "./boardAnswers.ts";

/** Stations a run joins to this one. */
export const stationsBeside = (job: Job, station: string): readonly string[] =>
  job.runs.flatMap(({ from, to }) => (from === station ? [to] : to === station ? [from] : []));

/**
 * The operation that lays a place of the board in another direction. Only the direction counts; the engine keeps every length true. The places beside
 * it, which the direction is taken from, are kept where they lie now.
 */
export function turnedTo(job: Job, board: BoardView, hold: BoardHold, to: BoardPoint): Operation {
  const placed = job.layout.board ?? {};
  const placeOf = ({ xMm, yMm }: BoardPoint): BoardPoint => ({
    xMm: Math.round(xMm - board.shift.xMm),
    yMm: Math.round(yMm - board.shift.yMm),
  });
  const beside = stationsBeside(job, hold.station);
  const kept = board.holds
    .filter(({ station }) => beside.includes(station) && placed[station] === undefined)
    .map((one) => [one.station, placeOf(one)] as const);
  const value = { ...Object.fromEntries(kept), ...placed, [hold.station]: placeOf(to) };
  return { op: "set", list: "job", path: ["layout", "board"], value };
}

/** A point turned about another, degrees clockwise on the sheet. */
export function turned(at: BoardPoint, about: BoardPoint, deg: number): BoardPoint {
  const rad = (deg * Math.PI) / 180;
  const [x, y] = [at.xMm - about.xMm, at.yMm - about.yMm];
  return {
    xMm: about.xMm + x * Math.cos(rad) - y * Math.sin(rad),
    yMm: about.yMm + x * Math.sin(rad) + y * Math.cos(rad),
  };
}
