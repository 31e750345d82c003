import { printQuantity } from "@copperwright/engine/words";
import { type ReactNode, useEffect, useMemo, useState } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useAnswer } from "../../engine/useAnswer.ts";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { goTo } from "../../store/route.ts";
import { useIssue } from "../../store/useIssue.ts";
import { PaperOptions } from "../papers/PaperOptions.tsx";
import { choiceOf } from "../papers/printSettings.ts";
import { usePrintSettings } from "../papers/usePrintSettings.ts";
import { BoardHolds } from "./BoardHolds.tsx";
import { BoardPrinting } from "./BoardPrinting.tsx";
import { BoardTurn } from "./BoardTurn.tsx";
import "./loomBoard.css";
import type { BoardView } from "./boardAnswers.ts";

const KINDS = ["wire", "station", "joint", "connector", "run", "part"] as const;

/** The full-size drawing the loom is built on, with the edges of the sheets it is printed on. */
export default function LoomBoardStep(): ReactNode {
  const [settings, putSettings] = usePrintSettings();
  const choice = useMemo(() => choiceOf(settings, null), [settings]);
  const issue = useIssue();
  const printed = useMemo(() => ({ ...choice, issue }), [choice, issue]);
  const { answer: looms } = useAnswer("boardLooms", undefined);
  const [picked, setPicked] = useState<string | null>(null);
  const loom = picked ?? [...(looms ?? [])].sort((a, b) => b.wires - a.wires)[0]?.id ?? "";
  const { answer: board, isStale, fault } = useLongAnswer("boardView", { loom, choice });
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
        {board !== null && <BoardFacts board={board} isStale={isStale} />}
        {board !== null && (
          <BoardPrinting
            loom={loom}
            board={board}
            choice={printed}
            form={settings.boardForm}
            onForm={(boardForm) => putSettings({ boardForm })}
          />
        )}
        {board !== null && <BoardTurn board={board} />}
        <PaperOptions settings={settings} onChange={putSettings} isOpen />
      </section>
      <div className="board-sheet">
        <p className="only-printed">
          Not to scale. True sheets come from "print the sheets" and "print the roll".
        </p>
        {fault !== null && <p role="alert">The board could not be laid out: {fault}</p>}
        {board === null && fault === null && (
          <p className="note waiting">laying the loom out at true length</p>
        )}
        {board !== null && (
          <SceneView
            picture={board.picture}
            label="Loom board"
            kinds={KINDS}
            over={<BoardHolds board={board} hasSheets={settings.boardForm === "sheets"} />}
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
