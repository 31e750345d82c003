import type { SurveyRun } from "@copperwright/engine/scenes";
import { type ReactNode, useState } from "react";
import { SceneView } from "../../drawing/SceneView.tsx";
import { useAnswer } from "../../engine/useAnswer.ts";
import { useBench } from "../../store/benchStore.ts";
import { Photograph } from "./Photograph.tsx";
import { RunBox, RunMark } from "./RunMark.tsx";
import { ScalePoints } from "./ScalePoints.tsx";
import { StationMark } from "./StationMark.tsx";
import type { SurveyView } from "./surveyAnswers.ts";
import { useRoom } from "./useRoom.ts";

type At = { readonly x: number; readonly y: number };

type SideSheetProps = {
  readonly onPick: (at: At) => void;
  readonly isScaling: boolean;
  readonly onScaled: () => void;
};

/** The machine from the left with its stations to be dragged and its runs to be measured. */
export function SideSheet({ onPick, isScaling, onScaled }: SideSheetProps): ReactNode {
  const { box, room } = useRoom();
  return (
    <div className="survey-sheet" ref={box}>
      {room !== null && (
        <Drawn room={room} onPick={onPick} isScaling={isScaling} onScaled={onScaled} />
      )}
    </div>
  );
}

function Drawn({
  room,
  onPick,
  isScaling,
  onScaled,
}: SideSheetProps & { room: { widthMm: number; heightMm: number } }): ReactNode {
  const { answer: view, fault } = useAnswer("surveyView", { room });
  if (fault !== null)
    return <p className="note">The side view could not be drawn. Your job is kept. {fault}</p>;
  if (view === null) return <p className="waiting note">drawing the machine</p>;
  return (
    <SceneView
      picture={view.picture}
      label="The machine from its left side, front left"
      over={
        <Over view={view} onPick={onPick}>
          {isScaling && <ScalePoints view={view} onScaled={onScaled} />}
        </Over>
      }
    />
  );
}

/** Photograph below, then lines, boxes and stations, so that no line goes through a figure; a station being dragged takes its runs along. */
function Over({
  view,
  onPick,
  children,
}: {
  view: SurveyView;
  onPick: (at: At) => void;
  children: ReactNode;
}): ReactNode {
  const [moved, setMoved] = useState<{ id: string; dxMm: number; dyMm: number } | null>(null);
  const chosen = useBench((bench) => bench.chosen?.id ?? null);
  const shift = (id: string, at: { xMm: number; yMm: number }): { xMm: number; yMm: number } =>
    moved?.id === id ? { xMm: at.xMm + moved.dxMm, yMm: at.yMm + moved.dyMm } : at;
  const place = new Map(view.stations.map(({ id, at }) => [id, shift(id, at)]));
  const hold = (run: SurveyRun) => ({
    run,
    a: place.get(run.from)!,
    b: place.get(run.to)!,
    isChosen: run.id === chosen,
    isMoved: moved?.id === run.from || moved?.id === run.to,
    onPick,
  });
  return (
    <g className="survey-marks">
      {view.photograph !== null && <Photograph photograph={view.photograph} />}
      {view.stations.map(({ id, leader }) =>
        leader === null || moved?.id === id ? null : (
          <line
            key={id}
            className="station-leader"
            x1={leader.a.x}
            y1={leader.a.y}
            x2={leader.b.x}
            y2={leader.b.y}
          />
        ),
      )}
      {view.runs.map((run) => (
        <RunMark key={run.id} {...hold(run)} />
      ))}
      {view.runs.map((run) => (
        <RunBox key={run.id} {...hold(run)} />
      ))}
      {view.stations.map((station) => (
        <StationMark
          key={station.id}
          station={station}
          view={view}
          isChosen={station.id === chosen}
          shift={moved?.id === station.id ? moved : null}
          onShift={setMoved}
          onPick={onPick}
        />
      ))}
      {children}
    </g>
  );
}
