import type { Job, Run, Wire } from "../job/index.ts";

/** A job with nothing in it, to be filled by tests of the loom. */
export function emptyJob(filled: Partial<Job>): Job {
  return {
    copperwrightJob: 1,
    id: "T",
    name: "test loom",
    revision: 1,
    date: "2026-01-01",
    machine: { maker: "none", model: "none", kind: "motorcycle" },
    supply: { nominalV: 12, earthPolarity: "negative", ignition: "none" },
    colours: { scheme: "own", letters: "iec" },
    stations: [],
    runs: [],
    bodies: [],
    bonds: [],
    parts: [],
    joints: [],
    connectors: [],
    circuits: [{ id: "C", name: "any", dropClass: "accessory" }],
    looms: [{ id: "L", name: "main loom" }],
    wires: [],
    intents: [],
    states: [],
    exclusions: [],
    decisions: {},
    build: [],
    tests: [],
    attachments: [],
    layout: {},
    ...filled,
  };
}

/** A run written short: id, ends, measured length (null: nobody measured it). */
export function run(
  id: string,
  ends: readonly [string, string],
  lengthMm: number | null,
  rest: Partial<Run> = {},
): Run {
  return {
    id,
    from: ends[0],
    to: ends[1],
    ...(lengthMm !== null && { lengthMm: { value: lengthMm, basis: "measured" as const } }),
    ...rest,
  };
}

/** A wire of loom L written short. */
export function wire(id: string, from: string, to: string, rest: Partial<Wire> = {}): Wire {
  return { id, from, to, circuit: "C", loom: "L", status: "new", ...rest };
}

/** A lamp with pins A and E at a station. */
export function lampAt(id: string, station?: string): Job["parts"][number] {
  return {
    id,
    name: id,
    kind: "lamp",
    source: "filament",
    ...(station !== undefined && { station }),
    pins: [{ id: "A" }, { id: "E" }],
    filaments: [{ pins: ["A", "E"], ratedV: 12, ratedW: 21 }],
  };
}
