import type { ReactNode } from "react";
import { choose, useBench } from "../../store/benchStore.ts";
import { PartSlip } from "./PartSlip.tsx";
import { RunSlip } from "./RunSlip.tsx";
import { StationSlip } from "./StationSlip.tsx";

type At = { readonly x: number; readonly y: number } | undefined;

/** The slip of what is chosen in the survey: a station, a run or a part. */
export function SurveySlip({ at, onAddPart }: { at: At; onAddPart: () => void }): ReactNode {
  const job = useBench((bench) => bench.document!.job);
  const chosen = useBench((bench) => bench.chosen);
  if (chosen === null) return null;
  const close = (): void => choose(null);
  if (chosen.kind === "station") {
    const station = job.stations.find(({ id }) => id === chosen.id);
    return (
      station && (
        <StationSlip
          key={station.id}
          station={station}
          at={at}
          onClose={close}
          onAddPart={onAddPart}
        />
      )
    );
  }
  if (chosen.kind === "run") {
    const run = job.runs.find(({ id }) => id === chosen.id);
    return run && <RunSlip key={run.id} run={run} at={at} onClose={close} />;
  }
  if (chosen.kind === "part") {
    const part = job.parts.find(({ id }) => id === chosen.id);
    return part && <PartSlip key={part.id} part={part} at={at} onClose={close} />;
  }
  return null;
}
