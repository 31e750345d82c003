import type { JsonPath } from "../read/jsonPointer.ts";
import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

const SPACES = {
  "unknown-station": { ids: "stations", what: "a station" },
  "unknown-run": { ids: "runs", what: "a run" },
  "unknown-circuit": { ids: "circuits", what: "a circuit" },
  "unknown-loom": { ids: "looms", what: "a loom" },
} as const;

type Use = readonly [code: keyof typeof SPACES, path: JsonPath, id: string | undefined];

/** Stations, runs, circuits and looms that are named and not there; runs that go nowhere. */
export function namedPlaces(index: JobIndex): readonly Problem[] {
  const { job } = index;
  const uses: readonly Use[] = [
    ...job.runs.flatMap(({ from, to }, i): readonly Use[] => [
      ["unknown-station", ["runs", i, "from"], from],
      ["unknown-station", ["runs", i, "to"], to],
    ]),
    ...job.bodies.flatMap((body, i) =>
      body.points.map(
        (point, k): Use => [
          "unknown-station",
          ["bodies", i, "points", k, "station"],
          point.station,
        ],
      ),
    ),
    ...(["parts", "joints", "connectors"] as const).flatMap((list) =>
      job[list].map((item, i): Use => ["unknown-station", [list, i, "station"], item.station]),
    ),
    ...job.joints.map(
      (joint, i): Use => ["unknown-run", ["joints", i, "offset", "run"], joint.offset?.run],
    ),
    ...job.wires.flatMap((wire, i): readonly Use[] => [
      ["unknown-circuit", ["wires", i, "circuit"], wire.circuit],
      ["unknown-loom", ["wires", i, "loom"], wire.loom],
      ...(wire.via ?? []).map((id, k): Use => ["unknown-station", ["wires", i, "via", k], id]),
    ]),
  ];
  return [...uses.flatMap((use) => unknownNames(index, use)), ...runsToNowhere(index)];
}

function unknownNames(index: JobIndex, [code, path, id]: Use): readonly Problem[] {
  const { ids, what } = SPACES[code];
  if (id === undefined || index[ids].has(id)) return [];
  const words = () => ({
    place: index.place(path),
    id,
    suggestion: suggestionFor(id, index[ids], what),
  });
  return [problem(code, path, id, words)];
}

function runsToNowhere(index: JobIndex): readonly Problem[] {
  return index.job.runs.flatMap(({ from, to }, i) => {
    const path = ["runs", i];
    const words = () => ({ place: index.place(path), station: from });
    return from === to ? [problem("run-goes-nowhere", [...path, "to"], from, words)] : [];
  });
}
