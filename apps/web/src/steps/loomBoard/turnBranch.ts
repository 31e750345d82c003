import type { Job, Operation } from "@copperwright/engine";
import type { BoardHold, BoardPoint, BoardView } from "./boardAnswers.ts";

/** The operation that lays a place of the board in another direction. Only the direction counts; the engine keeps every length true. */
export function placeHold(
  job: Job,
  { shift }: BoardView,
  hold: BoardHold,
  to: BoardPoint,
): Operation {
  const board = {
    ...job.layout.board,
    [hold.station]: { xMm: Math.round(to.xMm - shift.xMm), yMm: Math.round(to.yMm - shift.yMm) },
  };
  return { op: "set", list: "job", path: ["layout", "board"], value: board };
}

/** The place before it, which the direction is taken from, is kept where it lies now. */
export function withNeighbours(
  job: Job,
  board: BoardView,
  hold: BoardHold,
  to: BoardPoint,
): Operation {
  const beside = job.runs
    .filter((run) => run.from === hold.station || run.to === hold.station)
    .map((run) => (run.from === hold.station ? run.to : run.from));
  const kept = Object.fromEntries(
    board.holds
      .filter(
        ({ station }) => beside.includes(station) && job.layout.board?.[station] === undefined,
      )
      .map(({ station, xMm, yMm }) => [
        station,
        { xMm: Math.round(xMm - board.shift.xMm), yMm: Math.round(yMm - board.shift.yMm) },
      ]),
  );
  const placed = placeHold(job, board, hold, to) as { value: object };
  return { op: "set", list: "job", path: ["layout", "board"], value: { ...kept, ...placed.value } };
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
