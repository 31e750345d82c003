import { type ReactNode, useState } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useLight } from "../../drawing/useLight.ts";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import type { PaperChoice, PaperLine } from "./papersAnswers.ts";

/** One sheet as it will be printed, with the way to the next. */
export function PaperPreview({
  line,
  choice,
}: {
  line: PaperLine;
  choice: PaperChoice;
}): ReactNode {
  const light = useLight();
  const [index, setIndex] = useState(0);
  const at = Math.min(index, line.pageCount - 1);
  const question = { choice, name: line.name, index: at, light };
  const { answer: picture } = useLongAnswer("papersPage", question);
  return (
    <section className="paper-preview" aria-label={`Preview of ${line.title}`}>
      <header className="care-row">
        <h2>{line.title}</h2>
        <span className="note">
          sheet {at + 1} of {line.pageCount}
        </span>
        <button
          type="button"
          className="act small"
          disabled={at === 0}
          onClick={() => setIndex(at - 1)}
        >
          sheet before
        </button>
        <button
          type="button"
          className="act small"
          disabled={at + 1 >= line.pageCount}
          onClick={() => setIndex(at + 1)}
        >
          next sheet
        </button>
      </header>
      <div className="paper-ground">
        {picture === null ? (
          <p className="note waiting">drawing the sheet</p>
        ) : (
          <SceneView picture={picture} label={`${line.title}, sheet ${at + 1}`} />
        )}
      </div>
    </section>
  );
}
