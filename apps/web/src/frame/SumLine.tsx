import type { ReactNode } from "react";
import { choose, useBench } from "../store/benchStore.ts";
import type { SumSentence } from "../store/documentState.ts";
import { redo, undo } from "../store/editing.ts";
import { Ear, UndoArrow } from "./marks.tsx";
import { speak } from "./speak.ts";

/** The bottom edge: undo by name at the left, the working of what is chosen as one sentence, an ear that reads it aloud. */
export function SumLine(): ReactNode {
  const sum = useBench((bench) => bench.sum);
  const said = useBench((bench) => bench.said);
  const undoWhat = useBench((bench) => bench.document?.undo.at(-1)?.what ?? null);
  const redoWhat = useBench((bench) => bench.document?.redo.at(-1)?.what ?? null);
  const hasWords = sum !== null || said !== null;
  return (
    <footer className={hasWords ? "sum-line has-words" : "sum-line"}>
      <div className="sum-undo">
        <button
          type="button"
          className="square"
          disabled={undoWhat === null}
          onClick={() => void undo()}
          aria-label={undoWhat === null ? "Nothing to undo" : `Undo ${undoWhat}`}
        >
          <UndoArrow />
        </button>
        <span className="sum-undo-words">
          <b>Undo</b>
          <span className="note one-line">{undoWhat ?? "nothing done yet"}</span>
        </span>
        {redoWhat !== null && (
          <button type="button" className="act small" onClick={() => void redo()}>
            redo
          </button>
        )}
      </div>
      <div className="sum-words" aria-live="polite">
        {sum !== null ? <Sentence sum={sum} /> : <Said words={said} />}
      </div>
      {sum?.usedRatio !== undefined && <UsedBar ratio={sum.usedRatio} text={sum.usedText ?? ""} />}
      {hasWords && (
        <button type="button" className="square" onClick={speak} aria-label="Read this aloud">
          <Ear />
        </button>
      )}
    </footer>
  );
}

function Sentence({ sum }: { sum: SumSentence }): ReactNode {
  return (
    <>
      <p className="sum-first">
        {sum.name} <b>{sum.result}</b>
        {sum.equation !== "" && <> = {sum.equation}</>}
      </p>
      <p className="note sum-second">
        {sum.inputs.map((input) => (
          <span key={`${input.text} ${input.from}`}>
            {input.goTo === undefined ? (
              <span title={input.from}>{input.text}</span>
            ) : (
              <button
                type="button"
                className="figure-link"
                onClick={() => choose(input.goTo ?? null)}
              >
                {input.text}
              </button>
            )}{" "}
            ·{" "}
          </span>
        ))}
        {sum.note}
      </p>
    </>
  );
}

function UsedBar({ ratio, text }: { ratio: number; text: string }): ReactNode {
  const share = Math.min(1, Math.max(0, ratio));
  return (
    <div className="used-bar">
      <svg viewBox="0 0 100 8" width="126" height="10" aria-hidden="true">
        <rect x="0.5" y="0.5" width="99" height="7" fill="none" stroke="currentColor" />
        <rect x="0.5" y="0.5" width={99 * share} height="7" fill="currentColor" />
      </svg>
      <span className="note">{text}</span>
    </div>
  );
}

/** A long word of the bench scrolls in its two lines, so the keyboard must get to it. */
function Said({ words }: { words: string | null }): ReactNode {
  return (
    <p className="sum-said" tabIndex={words === null ? undefined : 0}>
      {words}
    </p>
  );
}
