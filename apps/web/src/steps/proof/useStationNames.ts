import { useMemo } from "react";
import { useBench } from "../../store/benchStore.ts";

/** Names of the stations by id. */
export function useStationNames(): ReadonlyMap<string, string> {
  const stations = useBench((bench) => bench.document?.job.stations);
  return useMemo(() => new Map(stations?.map(({ id, name }) => [id, name])), [stations]);
}
