import { type PointerEvent, type ReactNode, useState } from "react";
import { useAnswer } from "../../engine/useAnswer.ts";
import { say, useBench } from "../../store/benchStore.ts";
import { middleOf } from "../circuits/middleOf.ts";
import { type PlaceMm, sceneMm } from "../survey/sceneMm.ts";
import type { MachineView } from "./loomAnswers.ts";
import { passStation } from "./passStation.ts";

/** Further than this a drop is outside, mm of the drawing. */
const REACH_MM = 7;
const SLOP_MM = 2;

/** The way of the wire chosen, over the machine: pulled onto a station, the wire passes it. */
export function WayOver({ rings }: { rings: MachineView["rings"] }): ReactNode {
  const wire = useBench((bench) => (bench.chosen?.kind === "wire" ? bench.chosen.id : ""));
  const stations = useBench((bench) => bench.document!.job.stations);
  const { answer: points } = useAnswer("loomWay", wire);
  const [pull, setPull] = useState<{ readonly from: PlaceMm; readonly at: PlaceMm } | null>(null);
  const middle = middleOf([{ id: wire, points: points ?? [] }], wire);
  if (wire === "" || points === null || middle === null) return null;
  const aim = pull && nearest(rings, pull.at);
  const name = stations.find(({ id }) => id === aim?.station)?.name ?? "";
  const drop = (): void => {
    setPull(null);
    if (pull === null) return;
    const movedMm = Math.hypot(pull.at.xMm - pull.from.xMm, pull.at.yMm - pull.from.yMm);
    if (movedMm < SLOP_MM) return;
    if (aim === null) say("No station is there: pull the wire onto the station it is to pass.");
    else void passStation(wire, aim.station);
  };
  const hand = {
    "data-hand": "way",
    onPointerDown: (event: PointerEvent<SVGGraphicsElement>) => {
      event.currentTarget.setPointerCapture(event.pointerId);
      const at = sceneMm(event.currentTarget, event);
      setPull({ from: at, at });
    },
    onPointerMove: (event: PointerEvent<SVGGraphicsElement>) => {
      if (pull !== null) setPull({ ...pull, at: sceneMm(event.currentTarget, event) });
    },
    onPointerUp: drop,
    onPointerCancel: () => setPull(null),
  };
  const line = points.map(({ xMm, yMm }) => `${xMm},${yMm}`).join(" ");
  return (
    <g className="way-over">
      <polyline className="way-line" points={line} />
      <polyline className="way-hold" points={line} {...hand} />
      <circle className="way-handle" cx={middle.at.xMm} cy={middle.at.yMm} r="2.4" {...hand} />
      {pull && (
        <polyline
          className="way-pull"
          points={[middle.from, aim?.at ?? pull.at, middle.to]
            .map(({ xMm, yMm }) => `${xMm},${yMm}`)
            .join(" ")}
        />
      )}
      {aim && <circle className="way-aim" cx={aim.at.xMm} cy={aim.at.yMm} r="4" />}
      {aim && (
        <text className="way-name" x={aim.at.xMm} y={aim.at.yMm - 5.5}>
          {name}
        </text>
      )}
    </g>
  );
}

function nearest(rings: MachineView["rings"], at: PlaceMm): MachineView["rings"][number] | null {
  const gapMm = (ring: MachineView["rings"][number]): number =>
    Math.hypot(ring.at.xMm - at.xMm, ring.at.yMm - at.yMm);
  const [first] = [...rings].sort((a, b) => gapMm(a) - gapMm(b));
  return first !== undefined && gapMm(first) < REACH_MM ? first : null;
}
