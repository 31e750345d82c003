import type { Job, Surroundings } from "../job/index.ts";
import { figure } from "../tables/index.ts";

/** Row of tables/designAmbients for each kind of surroundings. */
const rowOf = {
  open: "open-frame",
  exposed: "open-frame",
  "under-tank": "under-tank",
  "battery-box": "under-tank",
  "near-engine": "near-cylinder",
  "headlamp-shell": "headlamp-shell",
  "near-exhaust": "headlamp-shell",
} as const satisfies Record<Surroundings, string>;

/** Design ambient of the job's runs and stations, °C. */
export interface Ambients {
  ofRun(run: string): number;
  /** Null where nobody has said what the station's surroundings are. */
  ofStation(station: string): number | null;
  readonly defaultC: number;
}

/**
 * Air round the loom: what was measured or chosen for the run, else what its surroundings usually are, else the job's
 * own figure, else the open frame.
 */
export function ambientsOf(job: Job): Ambients {
  const usualC = (surroundings: Surroundings): number =>
    figure("designAmbients", rowOf[surroundings], "value").value;
  const defaultC =
    job.decisions.ambientC?.value ?? figure("designAmbients", "open-frame", "value").value;
  const runs = new Map(
    job.runs.map(({ id, ambientC, surroundings }) => [
      id,
      ambientC?.value ?? (surroundings === undefined ? defaultC : usualC(surroundings)),
    ]),
  );
  const stations = new Map(
    job.stations.map(({ id, surroundings }) => [
      id,
      surroundings === undefined ? null : usualC(surroundings),
    ]),
  );
  return {
    ofRun: (run) => runs.get(run) ?? defaultC,
    ofStation: (station) => stations.get(station) ?? null,
    defaultC,
  };
}
