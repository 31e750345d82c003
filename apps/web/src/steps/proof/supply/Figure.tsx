import type { ReactNode } from "react";
import { showSum } from "../../../store/benchStore.ts";
import type { SumSentence } from "../../../store/documentState.ts";

export type FigureSum = Pick<SumSentence, "name" | "result" | "equation"> &
  Partial<Pick<SumSentence, "inputs" | "note" | "usedRatio" | "usedText">>;

/** A number somebody reads; a tap puts its working on the sum line. */
export function Figure({ sum, children }: { sum: FigureSum; children?: ReactNode }): ReactNode {
  return (
    <button
      type="button"
      className="figure-link supply-number"
      aria-label={`${sum.name} ${sum.result}`}
      onClick={() => showSum({ inputs: [], note: "", ...sum })}
    >
      {children ?? sum.result}
    </button>
  );
}
