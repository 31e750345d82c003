import type { ReactNode } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import type { BoardHold, BoardView } from "./boardAnswers.ts";
import { stationsBeside, turned, turnedTo } from "./turnBranch.ts";

const STEP_DEG = 15;

/** The way to turn a branch without dragging: choose its place, turn by fifteen degrees about the place before it. */
export function BoardTurn({ board }: { board: BoardView }): ReactNode {
  const chosen = useBench((bench) => bench.chosen);
  const hasPlaced = useBench(
    (bench) => Object.keys(bench.document?.job.layout.board ?? {}).length > 0,
  );
  const hold = board.holds.find(({ station }) => station === chosen?.id);
  const free = (): void => {
    void edit("lay the board out anew", {
      op: "set",
      list: "job",
      path: ["layout", "board"],
      value: undefined,
    });
  };
  return (
    <fieldset className="paper-options">
      <legend className="note">branches</legend>
      <label className="loom-row">
        <span className="note">place to turn; or drag its ring</span>
        <select
          className="field"
          value={hold?.station ?? ""}
          onChange={(event) => choose({ kind: "station", id: event.target.value })}
        >
          <option value="">choose</option>
          {board.holds.map(({ station, name }) => (
            <option key={station} value={station}>
              {name}
            </option>
          ))}
        </select>
      </label>
      {hold !== undefined && (
        <div className="care-row">
          <button type="button" className="act small" onClick={() => turn(board, hold, -STEP_DEG)}>
            turn left 15°
          </button>
          <button type="button" className="act small" onClick={() => turn(board, hold, STEP_DEG)}>
            turn right 15°
          </button>
        </div>
      )}
      {hasPlaced && (
        <button type="button" className="act small" onClick={free}>
          lay it out anew
        </button>
      )}
    </fieldset>
  );
}

function turn(board: BoardView, hold: BoardHold, deg: number): void {
  const job = useBench.getState().document?.job;
  if (job === undefined) return;
  const beside = stationsBeside(job, hold.station);
  const about = board.holds.find(({ station }) => beside.includes(station));
  if (about === undefined) return;
  void edit(
    `turn the branch to ${hold.name}`,
    turnedTo(job, board, hold, turned(hold, about, deg)),
  );
}
