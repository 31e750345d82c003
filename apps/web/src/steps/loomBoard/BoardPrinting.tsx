import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { Choices } from "../../entry/Choices.tsx";
import type { PaperChoice } from "../papers/papersAnswers.ts";
import type { PrintSettings } from "../papers/printSettings.ts";
import { usePaperFile } from "../papers/usePaperFile.ts";
import type { BoardView } from "./boardAnswers.ts";

const FORMS = [
  ["sheets", "sheets to glue"],
  ["roll", "one roll"],
] as const;

type PrintingProps = {
  readonly loom: string;
  readonly board: BoardView;
  readonly choice: PaperChoice;
  readonly form: PrintSettings["boardForm"];
  readonly onForm: (form: PrintSettings["boardForm"]) => void;
};

/** The board on sheets or on a roll, printed or saved here: the very file the papers hold. */
export function BoardPrinting({ loom, board, choice, form, onForm }: PrintingProps): ReactNode {
  const { isMaking, print, save } = usePaperFile(choice);
  const isRoll = form === "roll";
  const asked = { name: `14-board-${loom}${isRoll ? "-whole" : ""}` };
  return (
    <section className="board-printing" aria-label="Printing">
      <Choices legend="printed as" choices={FORMS} value={form} onChoice={onForm} />
      <p className="note">
        {isRoll
          ? `One drawing about ${printQuantity(board.widthMm, "mm")} by ${printQuantity(board.heightMm, "mm")}, for a roll or a plotter.`
          : `A map and ${board.tiles.length} sheets, glued along their crosses.`}{" "}
        Print at 100 %, with no fitting to the page. Measure the 100 mm bar on one sheet before
        laying wire on any.
      </p>
      <div className="care-row">
        <button
          type="button"
          className="act filled"
          disabled={isMaking}
          onClick={() => void print(asked)}
        >
          {isRoll ? "print the roll" : "print the sheets"}
        </button>
        <button
          type="button"
          className="act small"
          disabled={isMaking}
          onClick={() => void save(asked)}
        >
          save the file
        </button>
        {!isRoll && board.tiles.length > 1 && (
          <button
            type="button"
            className="act small"
            disabled={isMaking}
            onClick={() => void print({ ...asked, index: -1 })}
          >
            print one to measure
          </button>
        )}
      </div>
      {isMaking && (
        <p className="note" role="status">
          making it
        </p>
      )}
    </section>
  );
}
