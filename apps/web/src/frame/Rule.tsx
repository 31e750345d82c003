import type { ReactNode } from "react";
import { useWidthPx } from "../drawing/useWidthPx.ts";
import { useAnswer } from "../engine/useAnswer.ts";
import { RuleDrawing } from "./RuleDrawing.tsx";

/** The loom along a steel rule in real millimetres, front always left. A tap on a station chooses it everywhere. */
export function Rule(): ReactNode {
  const { answer } = useAnswer("rule", undefined);
  const { box, widthPx } = useWidthPx<HTMLElement>();
  return (
    <section className="rule" ref={box} aria-label="The loom along the rule">
      {answer !== null && widthPx > 0 && answer.stations.length > 1 && (
        <RuleDrawing view={answer} widthPx={widthPx} />
      )}
      {answer !== null && answer.stations.length < 2 && (
        <p className="rule-empty note">
          The loom lies here along the rule once Survey has two stations and a run between them.
        </p>
      )}
    </section>
  );
}
