import type { ReactNode } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";

/** One circuit at thumb's size. The marks come from the engine on this device. */
export function CircuitThumb({ circuit }: { circuit: string }): ReactNode {
  const { answer } = useAnswer("circuitsDiagram", { circuit });
  if (answer === null) return null;
  const { widthMm, heightMm, svg } = answer.picture;
  return (
    <svg
      viewBox={`0 0 ${widthMm} ${heightMm}`}
      className="scene-svg"
      aria-hidden="true"
      dangerouslySetInnerHTML={{ __html: svg }}
    />
  );
}
