import { type PointerEvent, type ReactNode, useState } from "react";
import { useBench } from "../../store/benchStore.ts";
import { sceneMm } from "../survey/sceneMm.ts";
import { AimMark } from "./AimMark.tsx";
import type { DiagramView } from "./circuitsAnswers.ts";
import { circuitsEdit } from "./circuitsEdit.ts";
import { connectBoth, pulling } from "./connecting.ts";
import { handlesOf, nearestPlace, type PinHandle } from "./handlesOf.ts";
import { pinWords } from "./thingKinds.ts";

/** Handles on the terminals of what is chosen. From a terminal a new wire is drawn; the end of a wire is moved. */
export function PinHandles({ places }: { places: DiagramView["places"] }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const chosen = useBench((bench) => bench.chosen);
  const [pull, setPull] = useState<{ from: PinHandle; xMm: number; yMm: number } | null>(null);
  if (chosen === null || places.length === 0) return null;
  const aim = pull && nearestPlace(places, pull, pull.from.id);
  const drop = (): void => {
    setPull(null);
    pulling(false);
    if (pull === null || aim === null) return;
    const pin = aim.id.includes(".") ? aim.id : `${aim.id}.*`;
    const { end, wire, pin: start } = pull.from;
    if (end === null || wire === null) connectBoth(start, pin);
    else
      void circuitsEdit(`move wire ${wire} to ${pinWords(pin)}`, {
        does: "move-end",
        wire,
        end,
        pin,
      });
  };
  return (
    <g className="pin-handles">
      {handlesOf(job, chosen, places).map((handle) => (
        <circle
          key={`${handle.id} ${handle.end ?? ""}`}
          data-hand="pin"
          cx={handle.at.xMm}
          cy={handle.at.yMm}
          r="2.1"
          className={handle.end === null ? "pin-handle" : "pin-handle end"}
          onPointerDown={(event: PointerEvent<SVGCircleElement>) => {
            event.currentTarget.setPointerCapture(event.pointerId);
            setPull({ from: handle, ...handle.at });
            pulling(true);
          }}
          onPointerMove={(event) => {
            if (pull !== null) setPull({ ...pull, ...sceneMm(event.currentTarget, event) });
          }}
          onPointerUp={drop}
          onPointerCancel={() => {
            setPull(null);
            pulling(false);
          }}
        />
      ))}
      {pull && (
        <line
          className="pin-pull"
          x1={pull.from.at.xMm}
          y1={pull.from.at.yMm}
          x2={aim?.at.xMm ?? pull.xMm}
          y2={aim?.at.yMm ?? pull.yMm}
        />
      )}
      {aim && <AimMark aim={aim} />}
    </g>
  );
}
