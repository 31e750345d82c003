import { printQuantity } from "@copperwright/engine/words";
import type { ReactNode } from "react";
import { useWidthPx } from "../../drawing/useWidthPx.ts";
import { useAnswer } from "../../engine/useAnswer.ts";
import { currentWords, ROOMY_PX, TimeCurrentPlot } from "./TimeCurrentPlot.tsx";

const HEIGHT_PX = 372;
const LOW_PX = 320;

/** The plot of one fuse, asked of the engine; its sources below it. */
export function FusePlot({ fuse, wire }: { fuse: string; wire: string | null }): ReactNode {
  const { box, widthPx } = useWidthPx();
  const { answer, fault, isStale } = useAnswer("proofPlot", { fuse });
  const isThis = answer?.fuse === fuse;
  return (
    <figure className="proof-figure" ref={box}>
      <figcaption className="note">
        time for {fuse} to open, and for its wires to reach their limit
        {isStale && !isThis && ": being reckoned"}
      </figcaption>
      {fault !== null && <p className="note">This plot could not be drawn: {fault}</p>}
      {answer !== null && isThis && widthPx > 0 && (
        <>
          <TimeCurrentPlot
            plot={answer}
            wire={wire}
            widthPx={widthPx}
            heightPx={widthPx < ROOMY_PX ? LOW_PX : HEIGHT_PX}
          />
          {widthPx < ROOMY_PX && (
            <p className="note">{answer.currents.map(currentWords).join(" · ")}</p>
          )}
          <p className="note">
            limits{" "}
            {answer.limits
              .map(({ value, unit, confidence }) => limitWords(value, unit, confidence))
              .join(", ")}{" "}
            · fuse{" "}
            {answer.bandSource
              .map(({ source, confidence }) => `${source}, ${confidence}`)
              .join("; ")}
          </p>
        </>
      )}
    </figure>
  );
}

const limitWords = (value: number, unit: string, confidence: string): string =>
  `${unit === "K" ? "+" : ""}${printQuantity(value, unit)} (${confidence === "memory" ? "from memory" : confidence})`;
