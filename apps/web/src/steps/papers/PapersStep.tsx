import { type ReactNode, useEffect, useState } from "react";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { MakePapers } from "./MakePapers.tsx";
import { PaperOptions } from "./PaperOptions.tsx";
import { PaperPreview } from "./PaperPreview.tsx";
import "./papers.css";
import { useProofKept } from "./keptProof.ts";
import { TakeAway } from "./takeAway/TakeAway.tsx";
import { usePaperChoice } from "./usePaperChoice.ts";

/** Every sheet of the pack, looked at before it is printed; one or all saved or printed. */
export default function PapersStep(): ReactNode {
  const [choice, setChoice] = usePaperChoice();
  const {
    answer: lines,
    fault,
    isStale,
  } = useLongAnswer("papersList", {
    choice,
    hasProof: useProofKept(),
  });
  const [name, setName] = useState<string | null>(null);
  const open = lines?.find((line) => line.name === name) ?? lines?.[0];
  const pageCount = lines?.reduce((sum, line) => sum + line.pageCount, 0) ?? 0;
  useEffect(() => {
    if (lines !== null) noteStep("papers", { text: `${pageCount} sheets`, box: "half" });
  }, [lines, pageCount]);
  return (
    <div className="papers">
      <section className="papers-list" aria-label="Papers">
        <h1>Papers</h1>
        <MakePapers choice={choice} />
        <PaperOptions choice={choice} onChoice={setChoice} />
        <TakeAway />
        {fault !== null && <p role="alert">The sheets could not be laid out: {fault}</p>}
        {lines === null && fault === null && <p className="note">laying out the sheets</p>}
        <ol aria-busy={isStale}>
          {lines?.map((line) => (
            <li key={line.name}>
              <button
                type="button"
                className={line === open ? "plain paper-line now" : "plain paper-line"}
                aria-current={line === open ? "true" : undefined}
                onClick={() => setName(line.name)}
              >
                <b>{line.title}</b>
                <span className="note">
                  {line.pageCount === 1 ? "1 sheet" : `${line.pageCount} sheets`}
                </span>
              </button>
            </li>
          ))}
        </ol>
      </section>
      {open !== undefined && <PaperPreview key={open.name} line={open} choice={choice} />}
    </div>
  );
}
