import type { ReactNode } from "react";
import { LengthField } from "../../entry/LengthField.tsx";
import "./papers.css";
import type { PaperChoice } from "./papersAnswers.ts";

const PAPERS: readonly (readonly [PaperChoice["paper"], string])[] = [
  ["a4", "A4"],
  ["a3", "A3"],
  ["letter", "Letter"],
];

/** Paper of the printer, and width of the board the loom is laid on. */
export function PaperOptions({
  choice,
  onChoice,
}: {
  choice: PaperChoice;
  onChoice: (choice: PaperChoice) => void;
}): ReactNode {
  return (
    <fieldset className="paper-options">
      <legend className="note">paper and board</legend>
      <div className="care-row">
        {PAPERS.map(([paper, word]) => (
          <label
            key={paper}
            className={paper === choice.paper ? "act small radio now" : "act small radio"}
          >
            <input
              type="radio"
              className="only-spoken"
              name="paper"
              checked={paper === choice.paper}
              onChange={() => onChoice({ ...choice, paper })}
            />
            {word}
          </label>
        ))}
      </div>
      <LengthField
        label="width of the loom board"
        valueMm={choice.board.boardWidthMm}
        onLength={(boardWidthMm) =>
          onChoice({ ...choice, board: { ...choice.board, boardWidthMm } })
        }
      />
    </fieldset>
  );
}
