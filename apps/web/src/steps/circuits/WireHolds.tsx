import { memo, type ReactNode } from "react";
import type { DiagramView } from "./circuitsAnswers.ts";

/** Every wire as wide as a fingertip, unseen: a tap beside a thin line still takes it. */
export const WireHolds = memo(function WireHolds({
  wires,
}: {
  wires: DiagramView["wires"];
}): ReactNode {
  return (
    <g className="wire-holds">
      {wires.map(({ id, points }, i) => (
        <polyline
          // A wire is drawn in several pieces, always in the same order.
          key={`${id} ${i}`}
          data-id={id}
          data-of="wire"
          points={points.map(({ xMm, yMm }) => `${xMm},${yMm}`).join(" ")}
        />
      ))}
    </g>
  );
});
