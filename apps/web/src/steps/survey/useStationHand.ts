import type { SurveyStation } from "@copperwright/engine/scenes";
import { type KeyboardEvent, type PointerEvent, useRef } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import type { Shift } from "./StationMark.tsx";
import { jobMm, type PlaceMm, sceneMm } from "./sceneMm.ts";
import type { SurveyView } from "./surveyAnswers.ts";
import { surveyEdit } from "./surveyEdit.ts";

interface Hand {
  readonly station: SurveyStation;
  readonly view: SurveyView;
  readonly onShift: (shift: Shift | null) => void;
  readonly onPick: (at: { x: number; y: number }) => void;
}

const MOUSE_SLOP_PX = 4;
const TOUCH_SLOP_PX = 10;
/** Of the machine. */
const STEP_MM = 10;
const LONG_STEP_MM = 50;
const REST_MS = 350;

const ARROWS: Readonly<Record<string, readonly [number, number]>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, -1],
  ArrowDown: [0, 1],
};

/** Drag and arrows of one station. Its measured lengths are never touched. */
export function useStationHand(hand: Hand) {
  const { station, onPick } = hand;
  const pick = (element: Element): void => {
    choose({ kind: "station", id: station.id });
    const box = element.querySelector(".station-ring")?.getBoundingClientRect();
    if (box !== undefined) onPick({ x: box.right, y: box.top });
  };
  return { ...useDrag(hand, pick), ...useArrows(hand, pick) };
}

async function put({ station, view, onShift }: Hand, dxMm: number, dyMm: number): Promise<void> {
  const now = useBench.getState().document?.job.layout.side?.[station.id];
  const base = now ?? jobMm(view, station.at);
  const xMm = Math.round(base.xMm + dxMm / view.scaleRatio);
  const yMm = Math.round(base.yMm + dyMm / view.scaleRatio);
  await surveyEdit(`move ${station.name}`, { does: "place", station: station.id, xMm, yMm });
  onShift(null);
}

/** A drag is one act. */
function useDrag(hand: Hand, pick: (element: Element) => void) {
  const { station, onShift } = hand;
  const drag = useRef<{ from: PlaceMm; x: number; y: number; moved: boolean } | null>(null);
  const end = (): void => {
    drag.current = null;
  };
  return {
    onPointerDown(event: PointerEvent<SVGGElement>): void {
      event.currentTarget.setPointerCapture(event.pointerId);
      const from = sceneMm(event.currentTarget, event);
      drag.current = { from, x: event.clientX, y: event.clientY, moved: false };
    },
    onPointerMove(event: PointerEvent<SVGGElement>): void {
      const began = drag.current;
      if (began === null) return;
      const slop = event.pointerType === "mouse" ? MOUSE_SLOP_PX : TOUCH_SLOP_PX;
      began.moved ||= Math.hypot(event.clientX - began.x, event.clientY - began.y) >= slop;
      if (!began.moved) return;
      const now = sceneMm(event.currentTarget, event);
      const [dxMm, dyMm] = [now.xMm - began.from.xMm, now.yMm - began.from.yMm];
      onShift({ id: station.id, dxMm, dyMm });
    },
    onPointerUp(event: PointerEvent<SVGGElement>): void {
      const began = drag.current;
      end();
      if (began === null) return;
      if (!began.moved) {
        pick(event.currentTarget);
        return;
      }
      const now = sceneMm(event.currentTarget, event);
      void put(hand, now.xMm - began.from.xMm, now.yMm - began.from.yMm);
    },
    onPointerCancel(): void {
      end();
      onShift(null);
    },
  };
}

/** A row of presses of the arrows is one act, done when the hand rests. */
function useArrows(hand: Hand, pick: (element: Element) => void) {
  const { station, view, onShift } = hand;
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const sum = useRef({ dxMm: 0, dyMm: 0 });
  return {
    onKeyDown(event: KeyboardEvent<SVGGElement>): void {
      if (event.key === "Enter" || event.key === " ") {
        event.preventDefault();
        pick(event.currentTarget);
        return;
      }
      const arrow = ARROWS[event.key];
      if (arrow === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      if (timer.current !== null) clearTimeout(timer.current);
      const stepMm = (event.shiftKey ? LONG_STEP_MM : STEP_MM) * view.scaleRatio;
      const dxMm = sum.current.dxMm + arrow[0] * stepMm;
      const dyMm = sum.current.dyMm + arrow[1] * stepMm;
      sum.current = { dxMm, dyMm };
      onShift({ id: station.id, dxMm, dyMm });
      timer.current = setTimeout(() => {
        sum.current = { dxMm: 0, dyMm: 0 };
        void put(hand, dxMm, dyMm);
      }, REST_MS);
    },
  };
}
