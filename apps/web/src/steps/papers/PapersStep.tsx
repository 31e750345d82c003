import { type ReactNode, useEffect, useMemo, useState } from "react";
import { useLongAnswer } from "../../engine/useLongAnswer.ts";
import { noteStep } from "../../store/benchStore.ts";
import { useIssue } from "../../store/useIssue.ts";
import { useStock } from "../parts/useStock.ts";
import { useProofKept } from "./keptProof.ts";
import { MakePapers } from "./MakePapers.tsx";
import { PaperOptions } from "./PaperOptions.tsx";
import { PaperPreview } from "./PaperPreview.tsx";
import "./papers.css";
import type { PaperLine } from "./papersAnswers.ts";
import { choiceOf } from "./printSettings.ts";
import { TakeAway } from "./takeAway/TakeAway.tsx";
import { usePrintSettings } from "./usePrintSettings.ts";

/** Every sheet of the pack, looked at before it is printed; one or all saved or printed. */
export default function PapersStep(): ReactNode {
  const [settings, putSettings] = usePrintSettings();
  const stockText = useStock().list?.text ?? null;
  const issue = useIssue();
  const choice = useMemo(() => choiceOf(settings, stockText, issue), [settings, stockText, issue]);
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
  const sheetCount = lines?.reduce((sum, line) => sum + (line.isRoll ? 0 : line.pageCount), 0);
  useEffect(() => {
    if (sheetCount !== undefined) noteStep("papers", { text: `${sheetCount} sheets`, box: "half" });
  }, [sheetCount]);
  return (
    <div className="papers">
      <section className="papers-list" aria-label="Papers">
        <h1>Papers</h1>
        <MakePapers choice={choice} />
        <PaperOptions settings={settings} onChange={putSettings} hasStock={stockText !== null} />
        <TakeAway />
        {fault !== null && <p role="alert">The sheets could not be laid out: {fault}</p>}
        {lines === null && fault === null && <p className="note">laying out the sheets</p>}
        <ol aria-busy={isStale}>
          {lines?.map((line) => (
            <Line key={line.name} line={line} isOpen={line === open} onOpen={setName} />
          ))}
        </ol>
      </section>
      {open !== undefined && (
        <PaperPreview key={open.name} line={open} choice={choice} isAsked={open.name === name} />
      )}
    </div>
  );
}

function Line({
  line: { name, title, pageCount, isRoll },
  isOpen,
  onOpen,
}: {
  line: PaperLine;
  isOpen: boolean;
  onOpen: (name: string) => void;
}): ReactNode {
  const count = pageCount === 1 ? "1 sheet" : `${pageCount} sheets`;
  return (
    <li>
      <button
        type="button"
        className={isOpen ? "plain paper-line now" : "plain paper-line"}
        aria-current={isOpen ? "true" : undefined}
        onClick={() => onOpen(name)}
      >
        <b>{title}</b>
        <span className="note">{isRoll ? "whole, on a roll" : count}</span>
      </button>
    </li>
  );
}
