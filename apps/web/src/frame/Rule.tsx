import { type ReactNode, useEffect, useRef, useState } from "react";
import { useAnswer } from "../engine/useAnswer.ts";
import { RuleDrawing } from "./RuleDrawing.tsx";

/** The loom along a steel rule in real millimetres, front always left. A tap on a station chooses it everywhere. */
export function Rule(): ReactNode {
  const { answer } = useAnswer("rule", undefined);
  const box = useRef<HTMLElement>(null);
  const [widthPx, setWidth] = useState(0);
  useEffect(() => {
    if (box.current === null) return;
    const watch = new ResizeObserver(([entry]) => setWidth(entry?.contentRect.width ?? 0));
    watch.observe(box.current);
    return () => watch.disconnect();
  }, []);
  return (
    <section className="rule" ref={box} aria-label="The loom along the rule">
      {answer !== null && widthPx > 0 && answer.stations.length > 1 && (
        <RuleDrawing view={answer} widthPx={widthPx} />
      )}
    </section>
  );
}
