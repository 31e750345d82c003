import type { ReactNode } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { surveyEdit } from "./surveyEdit.ts";

/** A place in the middle of the reference machine, from where a station is dragged or moved to its own. */
const MIDDLE = { xMm: 1000, yMm: 450 } as const;

/** Stations that are named but stand nowhere on the drawing yet. */
export function Unplaced(): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const side = job.layout.side ?? {};
  const unplaced = job.stations.filter(({ id }) => !(id in side));
  if (unplaced.length === 0) return null;
  const put = async (id: string, name: string): Promise<void> => {
    const places = Object.values(side);
    const mean = (pick: (at: { xMm: number; yMm: number }) => number, none: number): number =>
      places.length === 0 ? none : places.reduce((sum, at) => sum + pick(at), 0) / places.length;
    const xMm = Math.round(mean((at) => at.xMm, MIDDLE.xMm));
    const yMm = Math.round(mean((at) => at.yMm, MIDDLE.yMm));
    await surveyEdit(`put ${name} on the drawing`, { does: "place", station: id, xMm, yMm });
    choose({ kind: "station", id });
  };
  return (
    <div className="unplaced" role="group" aria-label="Not on the drawing yet">
      <span className="note">not on the drawing yet:</span>
      {unplaced.map(({ id, name }) => (
        <button key={id} type="button" className="act small" onClick={() => void put(id, name)}>
          put {name} there
        </button>
      ))}
    </div>
  );
}
