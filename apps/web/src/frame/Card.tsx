import { type ReactNode, useState } from "react";
import { useBench } from "../store/benchStore.ts";
import { undo } from "../store/editing.ts";
import { goTo, STEPS } from "../store/route.ts";
import { CardMenu } from "./CardMenu.tsx";
import { Conflicts } from "./Conflicts.tsx";
import { Tick, UndoArrow } from "./marks.tsx";
import { SavedLine } from "./SavedLine.tsx";
import { Stamp } from "./Stamp.tsx";
import { SupplyPlate } from "./SupplyPlate.tsx";

/** The route card at the right edge; on a phone its lower edge, which opens to the whole card. */
export function Card(): ReactNode {
  const document = useBench((bench) => bench.document);
  const [isOpen, setOpen] = useState(false);
  const close = (): void => setOpen(false);
  return (
    <>
      <aside className={isOpen ? "card open" : "card"} aria-label="Route card">
        <span className="card-hole" aria-hidden="true" />
        {document === null ? (
          <h2 className="card-name">Copperwright</h2>
        ) : (
          <>
            <h2 className="card-name">
              {document.job.machine.maker} {document.job.machine.model}
            </h2>
            <p className="note card-job">
              {document.job.id} · rev {document.baseRevision}
              {document.pending.length > 0 ? ` + ${document.pending.length}` : ""}
            </p>
            <SupplyPlate supply={document.job.supply} />
          </>
        )}
        <Steps close={close} />
        <CardMenu close={close} />
        {document !== null && <Conflicts />}
        {document !== null && <SavedLine />}
        {document !== null && <Stamp />}
        {isOpen && (
          <button type="button" className="act card-close" onClick={close}>
            back to the sheet
          </button>
        )}
      </aside>
      <CardEdge open={() => setOpen(true)} />
    </>
  );
}

function Steps({ close }: { close: () => void }): ReactNode {
  const step = useBench((bench) => bench.step);
  const notes = useBench((bench) => bench.stepNotes);
  const hasJob = useBench((bench) => bench.document !== null);
  return (
    <nav aria-label="Steps">
      <ol className="steps">
        {STEPS.map(({ name, word }, i) => (
          <li key={name}>
            <button
              type="button"
              className={name === step ? "step now" : "step"}
              aria-current={name === step ? "step" : undefined}
              disabled={!hasJob && name !== "jobs"}
              onClick={() => {
                goTo(name);
                close();
              }}
            >
              <span className="step-number">{i + 1}</span>
              <span className="step-word">{word}</span>
              <span className="note step-note">{notes[name]?.text}</span>
              <span className={`box ${notes[name]?.box ?? "empty"}`} aria-hidden="true">
                {notes[name]?.box === "ticked" && <Tick />}
              </span>
            </button>
          </li>
        ))}
      </ol>
    </nav>
  );
}

/** Phone only: undo, where we are, the stamp. */
function CardEdge({ open }: { open: () => void }): ReactNode {
  const step = useBench((bench) => bench.step);
  const document = useBench((bench) => bench.document);
  const at = STEPS.findIndex(({ name }) => name === step);
  const undoWhat = document?.undo.at(-1)?.what;
  return (
    <div className="card-edge">
      <button
        type="button"
        className="square"
        disabled={undoWhat === undefined}
        onClick={() => void undo()}
        aria-label={undoWhat === undefined ? "Nothing to undo" : `Undo ${undoWhat}`}
      >
        <UndoArrow />
      </button>
      <button
        type="button"
        className="plain card-edge-step"
        onClick={open}
        aria-label="Open the card"
      >
        <b>
          {at + 1} {STEPS[at]?.word}
        </b>
        <span className="note one-line">
          {undoWhat === undefined ? "all steps" : `Undo: ${undoWhat}`}
        </span>
      </button>
      {document !== null && <Stamp />}
    </div>
  );
}
