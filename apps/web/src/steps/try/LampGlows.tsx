import type { ReactNode } from "react";
import type { SidePicture } from "./worker/trySide.ts";
import type { LampView } from "./worker/tryView.ts";

/** Radius of a lamp at full light, mm on the drawing. */
const FULL_MM = 13;
const LEAST_MM = 1.6;

type Stations = SidePicture["stations"];

/** Light falls with the square of the distance, so the radius of the glow goes by the root of the light. */
const radiusMm = ({ lightPercent }: LampView): number =>
  Math.max(LEAST_MM, FULL_MM * Math.sqrt(Math.min(1.5, lightPercent / 100)));

/** Every lamp that gives light, as a glow round its station; several at one station stand round it. */
export function LampGlows({
  lamps,
  stations,
}: {
  lamps: readonly LampView[];
  stations: Stations;
}): ReactNode {
  const lit = lamps.filter(({ lit: isLit, lightPercent }) => isLit && lightPercent > 0);
  return (
    <g className="try-glows">
      <defs>
        <radialGradient id="lamp-glow">
          <stop offset="0" stopColor="var(--glow)" stopOpacity="0.95" />
          <stop offset="0.35" stopColor="var(--glow)" stopOpacity="0.5" />
          <stop offset="1" stopColor="var(--glow)" stopOpacity="0" />
        </radialGradient>
      </defs>
      {stations.flatMap(({ id, xMm, yMm }) => {
        const own = lit.filter(({ station }) => station === id);
        return own.map((lamp, k) => {
          const turn = (2 * Math.PI * k) / own.length;
          const apart = own.length > 1 ? 2.2 : 0;
          const [x, y] = [xMm + apart * Math.cos(turn), yMm + apart * Math.sin(turn)];
          return (
            <g key={`${lamp.part} ${lamp.filament}`} pointerEvents="none">
              <circle cx={x} cy={y} r={radiusMm(lamp)} fill="url(#lamp-glow)" />
              <circle
                cx={x}
                cy={y}
                r="0.9"
                fill="var(--glow)"
                stroke="var(--ink)"
                strokeWidth="0.3"
              />
            </g>
          );
        });
      })}
    </g>
  );
}
