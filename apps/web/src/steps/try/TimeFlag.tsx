import { type KeyboardEvent, type PointerEvent, type ReactNode, useRef } from "react";
import type { LogScale } from "./logScale.ts";
import { timeText } from "./timeText.ts";
import { useTry } from "./tryStore.ts";

const KEY_RATIO = 0.02;
const PAGE_RATIO = 0.1;
const FLAG_PX = 74;

type TimeFlagProps = {
  readonly axis: LogScale;
  readonly atS: number;
  readonly x: (timeS: number) => number;
  readonly widthPx: number;
  readonly bottom: number;
};

/** A flag on the time axis: dragged, or moved by the arrow keys, it sets lamps, meter and rule to that moment. */
export function TimeFlag({ axis, atS, x, widthPx, bottom }: TimeFlagProps): ReactNode {
  const isHeld = useRef(false);
  const put = (ratio: number): void => useTry.setState({ atS: axis.valueAt(ratio) });
  const follow = (event: PointerEvent<SVGGElement>): void => {
    const box = event.currentTarget.ownerSVGElement?.getBoundingClientRect();
    if (isHeld.current && box !== undefined) {
      const [left, right] = [x(axis.from), x(axis.to)];
      put((event.clientX - box.left - left) / (right - left));
    }
  };
  const press = (event: KeyboardEvent): void => {
    const ratio = movedBy(event.key, axis.ratioOf(atS));
    if (ratio === null) return;
    event.preventDefault();
    put(ratio);
  };
  const at = x(atS);
  const left = Math.min(Math.max(0, at - FLAG_PX / 2), widthPx - FLAG_PX);
  return (
    <g
      className="try-flag"
      role="slider"
      tabIndex={0}
      aria-label="Moment since the fault"
      aria-valuemin={axis.from}
      aria-valuemax={axis.to}
      aria-valuenow={atS}
      aria-valuetext={timeText(atS)}
      onKeyDown={press}
      onPointerDown={(event) => {
        isHeld.current = true;
        event.currentTarget.setPointerCapture(event.pointerId);
        follow(event);
      }}
      onPointerMove={follow}
      onPointerUp={() => {
        isHeld.current = false;
      }}
      onPointerCancel={() => {
        isHeld.current = false;
      }}
    >
      <rect x={at - 22} y={0} width={44} height={bottom} fill="transparent" />
      <line x1={at} x2={at} y1={24} y2={bottom} stroke="var(--ink)" strokeWidth="2" />
      <rect x={left} y={1} width={FLAG_PX} height={25} fill="var(--ink)" />
      <text x={left + FLAG_PX / 2} y={19} textAnchor="middle" className="try-flag-text">
        {timeText(atS)}
      </text>
    </g>
  );
}

function movedBy(key: string, ratio: number): number | null {
  switch (key) {
    case "ArrowRight":
    case "ArrowUp":
      return ratio + KEY_RATIO;
    case "ArrowLeft":
    case "ArrowDown":
      return ratio - KEY_RATIO;
    case "PageUp":
      return ratio + PAGE_RATIO;
    case "PageDown":
      return ratio - PAGE_RATIO;
    case "Home":
      return 0;
    case "End":
      return 1;
    default:
      return null;
  }
}
