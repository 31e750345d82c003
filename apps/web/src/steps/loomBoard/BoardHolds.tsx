import { type PointerEvent, type ReactNode, useState } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { edit } from "../../store/editing.ts";
import type { BoardHold, BoardView } from "./boardAnswers.ts";
import { turnedTo } from "./turnBranch.ts";

const LEAST_DRAG_MM = 4;

/** Sheet edges, and a ring on every place that can be dragged to another direction. */
export function BoardHolds({
  board,
  hasSheets,
}: {
  board: BoardView;
  hasSheets: boolean;
}): ReactNode {
  return (
    <>
      <g
        fill="none"
        stroke="var(--ink2)"
        strokeWidth="0.35"
        strokeDasharray="4 2"
        pointerEvents="none"
      >
        {(hasSheets ? board.tiles : []).map(({ name, xMm, yMm, widthMm, heightMm }) => (
          <rect key={name} x={xMm} y={yMm} width={widthMm} height={heightMm} />
        ))}
      </g>
      {board.holds.map((hold) => (
        <Hold key={hold.station} hold={hold} board={board} />
      ))}
    </>
  );
}

function Hold({ hold, board }: { hold: BoardHold; board: BoardView }): ReactNode {
  const isChosen = useBench((bench) => bench.chosen?.id === hold.station);
  const [drag, setDrag] = useState<{ xMm: number; yMm: number } | null>(null);
  const pointOf = (event: PointerEvent<SVGElement>): { xMm: number; yMm: number } => {
    const svg = event.currentTarget.ownerSVGElement;
    const matrix = svg?.getScreenCTM()?.inverse();
    const { x, y } = new DOMPoint(event.clientX, event.clientY).matrixTransform(matrix);
    return { xMm: x, yMm: y };
  };
  const drop = (): void => {
    const job = useBench.getState().document?.job;
    const isFar =
      drag !== null && Math.hypot(drag.xMm - hold.xMm, drag.yMm - hold.yMm) > LEAST_DRAG_MM;
    if (isFar && job !== undefined)
      void edit(`turn the branch to ${hold.name}`, turnedTo(job, board, hold, drag));
    setDrag(null);
  };
  return (
    <g>
      {drag !== null && (
        <line
          x1={hold.xMm}
          y1={hold.yMm}
          x2={drag.xMm}
          y2={drag.yMm}
          stroke="var(--verdigris)"
          strokeWidth="1.4"
        />
      )}
      <circle
        data-hand=""
        cx={drag?.xMm ?? hold.xMm}
        cy={drag?.yMm ?? hold.yMm}
        r={isChosen ? 7 : 5}
        fill={isChosen ? "var(--verdigris)" : "var(--sheet)"}
        fillOpacity={0.75}
        stroke="var(--ink)"
        strokeWidth="0.7"
        style={{ cursor: "grab" }}
        onPointerDown={(event) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          choose({ kind: "station", id: hold.station });
          setDrag(pointOf(event));
        }}
        onPointerMove={(event) => drag !== null && setDrag(pointOf(event))}
        onPointerUp={drop}
        onPointerCancel={() => setDrag(null)}
      />
    </g>
  );
}
