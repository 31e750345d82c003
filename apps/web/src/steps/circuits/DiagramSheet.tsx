import { type ReactNode, useRef } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useAnswer } from "../../engine/useAnswer.ts";
import { MiddleHandle } from "./MiddleHandle.tsx";
import { PinHandles } from "./PinHandles.tsx";
import { useChosenInView } from "./useChosenInView.ts";
import { WireHolds } from "./WireHolds.tsx";

type DiagramSheetProps = {
  readonly circuit: string | null;
  readonly onPick: (at: { x: number; y: number }) => void;
};

const KINDS = ["wire", "part", "joint", "connector", "body", "pin"] as const;

/** The diagram itself; what is chosen shows handles on its terminals, to be dragged to another. */
export function DiagramSheet({ circuit, onPick }: DiagramSheetProps): ReactNode {
  const { answer: view, isStale, fault } = useAnswer("circuitsDiagram", { circuit });
  const box = useRef<HTMLDivElement>(null);
  useChosenInView(box);
  if (fault !== null && view === null) {
    return (
      <p className="waiting note">This diagram could not be drawn. Your job is kept. {fault}</p>
    );
  }
  if (view === null) {
    const text = isStale ? "drawing the wiring" : "Nothing is in this circuit yet.";
    return <p className="waiting note">{text}</p>;
  }
  return (
    <div className="circuits-sheet" ref={box} aria-busy={isStale}>
      <SceneView
        key={circuit ?? ""}
        keepsPlace
        picture={view.picture}
        label={`Diagram, ${view.title}. Arrows go along the current from the thing chosen`}
        kinds={KINDS}
        onPick={(_, at) => onPick(at)}
        fit="readable"
        over={
          <>
            <WireHolds wires={view.wires} />
            <MiddleHandle places={view.places} wires={view.wires} />
            <PinHandles places={view.places} />
          </>
        }
      />
    </div>
  );
}
