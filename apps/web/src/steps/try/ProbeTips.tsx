import { type PointerEvent, type ReactNode, useRef, useState } from "react";
import { say } from "../../store/benchStore.ts";
import { type Lead, useTry } from "./tryStore.ts";
import type { At, SidePicture } from "./worker/trySide.ts";

const SNAP_PX = 22;
const LEADS = ["red", "black"] as const;

/** The meter's two tips. Dragged to a station they are put on one of its pins; keys r and b and the lists do the same. */
export function ProbeTips({ side }: { side: SidePicture }): ReactNode {
  return LEADS.map((lead, k) => <Tip key={lead} lead={lead} side={side} index={k} />);
}

function Tip({ lead, side, index }: { lead: Lead; side: SidePicture; index: number }): ReactNode {
  const pin = useTry((bench) => bench[lead]);
  const [held, setHeld] = useState<At | null>(null);
  const group = useRef<SVGGElement>(null);
  const rest: At = { xMm: 6 + 9 * index, yMm: side.picture.heightMm - 8 };
  const on = side.stations.find(({ id }) => id === side.stationOfPin[pin ?? ""]);
  const put = on === undefined ? rest : { xMm: on.xMm + 2 * index - 1, yMm: on.yMm };
  const at = held ?? put;
  const pointer = (event: PointerEvent): At => place(event, group.current);
  const drop = (event: PointerEvent): void => {
    const near = nearest(pointer(event), side, group.current);
    setHeld(null);
    if (near === null) say("Put the tip down on a station of the loom.");
    else useTry.setState({ offer: { lead, station: near } });
  };
  const away = side.picture.heightMm * (0.7 + 0.12 * index);
  return (
    <g
      ref={group}
      className={`try-tip ${lead}`}
      data-hand=""
      onPointerDown={(event) => {
        event.currentTarget.setPointerCapture(event.pointerId);
        setHeld(pointer(event));
      }}
      onPointerMove={(event) => held !== null && setHeld(pointer(event))}
      onPointerUp={drop}
      onPointerCancel={() => setHeld(null)}
    >
      <path
        d={`M-12 ${away}C${at.xMm * 0.3 - 6} ${away} ${at.xMm - 12} ${at.yMm + 26} ${at.xMm - 3.4} ${at.yMm + 6.6}`}
        className="try-lead"
      />
      <path d={`M${at.xMm} ${at.yMm}L${at.xMm - 3.4} ${at.yMm + 6.6}`} className="try-needle" />
      <circle cx={at.xMm - 3.4} cy={at.yMm + 6.6} r="5.5" fill="transparent" />
      <circle cx={at.xMm} cy={at.yMm} r="0.7" className="try-point" />
    </g>
  );
}

/** Where on the drawing a pointer is, mm. */
function place({ clientX, clientY }: PointerEvent, mark: SVGGElement | null): At {
  const matrix = mark?.getScreenCTM();
  if (matrix === null || matrix === undefined) return { xMm: 0, yMm: 0 };
  const { x, y } = new DOMPoint(clientX, clientY).matrixTransform(matrix.inverse());
  return { xMm: x, yMm: y };
}

function nearest({ xMm, yMm }: At, side: SidePicture, mark: SVGGElement | null): string | null {
  const pxPerMm = mark?.getScreenCTM()?.a ?? 4;
  const withPins = new Set(Object.values(side.stationOfPin));
  const byDistance = side.stations
    .filter(({ id }) => withPins.has(id))
    .map(({ id, ...at }) => ({ id, px: pxPerMm * Math.hypot(at.xMm - xMm, at.yMm - yMm) }))
    .sort((a, b) => a.px - b.px);
  const [first] = byDistance;
  return first !== undefined && first.px <= SNAP_PX ? first.id : null;
}
