import type { ReactNode } from "react";
import { useBench } from "../store/benchStore.ts";
import { STEPS } from "../store/route.ts";
import { verdictWord } from "./verdictWord.ts";

/** Whose sheet a printed one is. On screen the card says it; on paper there is no card. */
export function PrintedHead(): ReactNode {
  const step = useBench((bench) => bench.step);
  const document = useBench((bench) => bench.document);
  const result = useBench((bench) => bench.verdict.result);
  if (document === null) return null;
  const { job, baseRevision } = document;
  const word = STEPS.find(({ name }) => name === step)?.word ?? "";
  return (
    <p className="printed-head" aria-hidden="true">
      <b>{word}</b> · {job.machine.maker} {job.machine.model} · {job.id}, revision {baseRevision}
      {result !== null && ` · ${verdictWord(result.verdict)}`}
    </p>
  );
}
