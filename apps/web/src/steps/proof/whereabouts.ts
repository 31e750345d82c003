import type { CheckedJob } from "@copperwright/engine";

/** Where every thing of a job is: what a finding's place on the machine is told by. */
export interface Whereabouts {
  /** Stations a thing is at or runs between, by its id. */
  readonly stations: Readonly<Record<string, readonly string[]>>;
  /** Runs of the loom a wire lies in, by its id. */
  readonly runs: Readonly<Record<string, readonly string[]>>;
  /** Fuses that guard a wire or a lead, by its id. */
  readonly fuses: Readonly<Record<string, readonly string[]>>;
}

export function whereabouts({ job, routed, pins, protection }: CheckedJob["design"]): Whereabouts {
  const stations: Record<string, readonly string[]> = {};
  for (const { id, ...thing } of [...job.parts, ...job.joints, ...job.connectors]) {
    if (thing.station !== undefined) stations[id] = [thing.station];
  }
  for (const { ref, station } of pins.values()) if (station !== null) stations[ref] = [station];
  for (const { id } of job.stations) stations[id] = [id];
  for (const { id, from, to } of job.runs) stations[id] = [from, to];
  for (const { id, from, to } of [...job.wires, ...job.bonds]) {
    const ends = [from, to].flatMap((pin) => pins.get(pin)?.station ?? []);
    stations[id] = [...new Set(ends)];
  }
  const runs: Record<string, readonly string[]> = {};
  for (const [wire, stretches] of routed.stretchesOfWire) {
    runs[wire] = [...new Set(stretches.map(({ run }) => run))];
  }
  const fuses: Record<string, readonly string[]> = {};
  for (const [wire, guards] of protection.guards) {
    fuses[wire] = [...new Set(guards.flatMap(({ cut }) => cut))];
  }
  return { stations, runs, fuses };
}
