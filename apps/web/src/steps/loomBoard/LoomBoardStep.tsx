import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useEffect, useState } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useLight } from "../../drawing/useLight.ts";
import { useAnswer } from "../../engine/useAnswer.ts";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";
import { PaperOptions } from "../papers/PaperOptions.tsx";
import { usePaperChoice } from "../papers/usePaperChoice.ts";
import { BoardHolds } from "./BoardHolds.tsx";
import { BoardTurn } from "./BoardTurn.tsx";
import "./loomBoard.css";
import type { BoardView } from "./boardAnswers.ts";

const KINDS = ["wire", "station", "joint", "connector", "run", "part"] as const;

/** The full-size drawing the loom is built on, with the edges of the sheets it is printed on. */
export default function LoomBoardStep(): ReactNode {
  const light = useLight();
  const [choice, setChoice] = usePaperChoice();
  const { answer: looms } = useAnswer("boardLooms", undefined);
  const [picked, setPicked] = useState<string | null>(null);
  const loom = picked ?? [...(looms ?? [])].sort((a, b) => b.wires - a.wires)[0]?.id ?? "";
  const { answer: board, isStale, fault } = useLongAnswer("boardView", { loom, choice, light });
  useEffect(() => {
    if (board !== null) noteStep("loomBoard", { text: `${board.tiles.length}`, box: "half" });
  }, [board]);
  if (looms !== null && looms.length === 0) return <NoLoom />;
  return (
    <div className="board">
      <section className="board-side" aria-label="Board">
        <h1>Loom board</h1>
        <label className="loom-row">
          <span className="note">loom</span>
          <select
            className="field"
            value={loom}
            onChange={(event) => setPicked(event.target.value)}
          >
            {looms?.map(({ id, name, wires }) => (
              <option key={id} value={id}>
                {name}, {wires} wires
              </option>
            ))}
          </select>
        </label>
        <PaperOptions choice={choice} onChoice={setChoice} />
        {board !== null && <BoardFacts board={board} isStale={isStale} />}
        {board !== null && <BoardTurn board={board} />}
        <button type="button" className="act filled" onClick={() => goTo("papers")}>
          to the papers, to print it
        </button>
        <p className="note">
          Print at 100 %, with no fitting to the page. Measure the 100 mm bar on one sheet before
          laying wire on any.
        </p>
      </section>
      <div className="board-sheet">
        {fault !== null && <p role="alert">The board could not be laid out: {fault}</p>}
        {board === null && fault === null && (
          <p className="note waiting">laying the loom out at true length</p>
        )}
        {board !== null && (
          <SceneView
            picture={board.picture}
            label="Loom board"
            kinds={KINDS}
            over={<BoardHolds board={board} />}
          />
        )}
      </div>
    </div>
  );
}

function BoardFacts({ board, isStale }: { board: BoardView; isStale: boolean }): ReactNode {
  const faults = [
    board.crossingCount > 0 ? `${board.crossingCount} branches cross` : "",
    board.tightCount > 0 ? `${board.tightCount} places under 25 mm apart` : "",
    board.overWidthMm > 0 ? `${printQuantity(board.overWidthMm, "mm")} wider than the board` : "",
    board.unmeasuredCount > 0 ? `${board.unmeasuredCount} stretches not measured are left out` : "",
  ].filter(Boolean);
  return (
    <p aria-busy={isStale}>
      {printQuantity(board.widthMm, "mm")} by {printQuantity(board.heightMm, "mm")},{" "}
      {board.tiles.length} sheets, {board.foldCount} {board.foldCount === 1 ? "fold" : "folds"} the
      machine does not have.{" "}
      {faults.length === 0 ? "No branch crosses another." : `${faults.join("; ")}.`}
    </p>
  );
}

function NoLoom(): ReactNode {
  return (
    <div className="waiting">
      <h1>Loom board</h1>
      <p>
        This job has only loose wires, so there is no loom to lay on a board. The cut list in Papers
        has every length.
      </p>
      <button type="button" className="act filled" onClick={() => goTo("papers")}>
        to the papers
      </button>
    </div>
  );
}
