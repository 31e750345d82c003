import { type ReactNode, useEffect, useRef, useState } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import { PrintedPage } from "../../frame/PrintedPage.tsx";
import type { PaperChoice, PaperLine } from "./papersAnswers.ts";
import { type PaperFile, usePaperFile } from "./usePaperFile.ts";

type PreviewProps = {
  readonly line: PaperLine;
  readonly choice: PaperChoice;
  /** It was asked for by hand, so it comes into sight. */
  readonly isAsked: boolean;
};

/** One sheet as it will be printed, with the way to the next, and the paper it belongs to printed or saved. */
export function PaperPreview({ line, choice, isAsked }: PreviewProps): ReactNode {
  const [index, setIndex] = useState(0);
  const at = Math.min(index, line.pageCount - 1);
  const {
    answer: page,
    isStale,
    fault,
  } = useLongAnswer("papersPage", {
    choice,
    name: line.name,
    index: at,
  });
  const place = useRef<HTMLElement>(null);
  useEffect(() => {
    if (isAsked) place.current?.scrollIntoView({ block: "nearest" });
  }, [isAsked]);
  return (
    <section ref={place} className="paper-preview" aria-label={`Preview of ${line.title}`}>
      <header className="paper-head">
        <h2>{line.title}</h2>
        <Turning at={at} count={line.pageCount} onTurn={setIndex} />
        <PrintVerbs line={line} at={at} file={usePaperFile(choice)} />
      </header>
      <div className={page?.isBlack ? "paper-ground on-white" : "paper-ground"} aria-busy={isStale}>
        {fault !== null && <p role="alert">The sheet could not be drawn: {fault}</p>}
        {page === null && fault === null && <p className="note waiting">drawing the sheet</p>}
        {page !== null && (
          <>
            <SceneView picture={page.picture} label={`${line.title}, sheet ${at + 1}`} />
            <PrintedPage widthMm={page.picture.widthMm} heightMm={page.picture.heightMm} />
          </>
        )}
      </div>
    </section>
  );
}

function Turning({
  at,
  count,
  onTurn,
}: {
  at: number;
  count: number;
  onTurn: (index: number) => void;
}): ReactNode {
  if (count === 1) return null;
  return (
    <div className="care-row">
      <button
        type="button"
        className="act small"
        disabled={at === 0}
        onClick={() => onTurn(at - 1)}
      >
        sheet before
      </button>
      <span className="note" role="status">
        sheet {at + 1} of {count}
      </span>
      <button
        type="button"
        className="act small"
        disabled={at + 1 >= count}
        onClick={() => onTurn(at + 1)}
      >
        next sheet
      </button>
    </div>
  );
}

function PrintVerbs({
  line: { name, pageCount, isRoll },
  at,
  file,
}: {
  line: PaperLine;
  at: number;
  file: PaperFile;
}): ReactNode {
  const { isMaking, print, save } = file;
  const one = { name, index: at };
  return (
    <div className="care-row">
      <button
        type="button"
        className="act small"
        disabled={isMaking}
        onClick={() => void print(one)}
      >
        {isRoll ? "print on a roll" : "print this sheet"}
      </button>
      {pageCount > 1 && (
        <button
          type="button"
          className="act small"
          disabled={isMaking}
          onClick={() => void print({ name })}
        >
          print all {pageCount}
        </button>
      )}
      <button
        type="button"
        className="act small"
        disabled={isMaking}
        onClick={() => void save({ name })}
      >
        save the file
      </button>
      {isMaking && (
        <span className="note" role="status">
          making it
        </span>
      )}
    </div>
  );
}
