import { type PointerEvent, type ReactNode, useState } from "react";
import { say, useBench } from "../../store/benchStore.ts";
import { type PlaceMm, sceneMm } from "../survey/sceneMm.ts";
import { AimMark } from "./AimMark.tsx";
import type { DiagramView } from "./circuitsAnswers.ts";
import { pulling } from "./connecting.ts";
import { nearestPlace } from "./handlesOf.ts";
import { leadOver } from "./leading.ts";
import { middleOf } from "./middleOf.ts";
import { ownerOf } from "./thingKinds.ts";

type MiddleHandleProps = {
  readonly places: DiagramView["places"];
  readonly wires: DiagramView["wires"];
};

/** The middle of the wire chosen: pulled onto a terminal, joint or connector, the wire is led over it. */
export function MiddleHandle({ places, wires }: MiddleHandleProps): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const chosen = useBench((bench) => bench.chosen);
  const [pull, setPull] = useState<PlaceMm | null>(null);
  const wire = job.wires.find(({ id }) => chosen?.kind === "wire" && id === chosen.id);
  const middle = wire === undefined ? null : middleOf(wires, wire.id);
  if (wire === undefined || middle === null) return null;
  // Its own ends, and the joints it ends on, are nowhere else.
  const own = [wire.from, wire.to].flatMap((pin) => [pin, ownerOf(pin)]);
  const others = places.filter(({ id }) => !own.includes(id));
  const aim = pull && nearestPlace(others, pull, "");
  const end = (): void => {
    setPull(null);
    pulling(false);
  };
  const drop = (): void => {
    const hasMoved =
      pull !== null && Math.hypot(pull.xMm - middle.at.xMm, pull.yMm - middle.at.yMm) > SLOP_MM;
    end();
    if (aim !== null) leadOver(wire.id, pinFor(job, aim.id));
    else if (hasMoved)
      say("Nothing is there: pull the middle of a wire onto a terminal, a joint or a connector.");
  };
  return (
    <g className="pin-handles">
      <rect
        data-hand="middle"
        className="pin-handle middle"
        x={middle.at.xMm - SIDE_MM / 2}
        y={middle.at.yMm - SIDE_MM / 2}
        width={SIDE_MM}
        height={SIDE_MM}
        transform={`rotate(45 ${middle.at.xMm} ${middle.at.yMm})`}
        onPointerDown={(event: PointerEvent<SVGRectElement>) => {
          event.currentTarget.setPointerCapture(event.pointerId);
          setPull(middle.at);
          pulling(true);
        }}
        onPointerMove={(event) => {
          if (pull !== null) setPull(sceneMm(event.currentTarget, event));
        }}
        onPointerUp={drop}
        onPointerCancel={end}
      />
      {pull && (
        <polyline
          className="pin-pull"
          points={[middle.from, aim?.at ?? pull, middle.to]
            .map(({ xMm, yMm }) => `${xMm},${yMm}`)
            .join(" ")}
        />
      )}
      {aim && <AimMark aim={aim} />}
    </g>
  );
}

const SIDE_MM = 3.6;
const SLOP_MM = 2;

/** Joints, connectors and bodies give a place of their own to what is led over them. */
function pinFor(
  { joints, connectors, bodies }: Parameters<typeof hasOwner>[0],
  id: string,
): string {
  const owner = id.includes(".") ? ownerOf(id) : id;
  return hasOwner({ joints, connectors, bodies }, owner) ? `${owner}.*` : id;
}

type Named = readonly { readonly id: string }[];
const hasOwner = (
  lists: { readonly joints: Named; readonly connectors: Named; readonly bodies: Named },
  owner: string,
): boolean =>
  [lists.joints, lists.connectors, lists.bodies].some((list) =>
    list.some(({ id }) => id === owner),
  );
