import type { Job } from "../job.ts";
import type { Operation } from "./operation.ts";

const set = (
  list: "parts" | "joints" | "connectors",
  id: string,
  path: string,
): Extract<Operation, { op: "set" }> => ({
  op: "set",
  list,
  id,
  path: [path],
});

/** A station put somewhere in the side view. Nothing measured changes: lengths belong to runs, not to the drawing. */
export function placeStation(
  job: Job,
  station: string,
  at: { xMm: number; yMm: number },
): Operation {
  const name = `Place ${station}`;
  if (job.layout.side === undefined) {
    return { op: "set", list: "job", path: ["layout", "side"], value: { [station]: at } };
  }
  const whole: Operation = { op: "set", list: "job", path: ["layout", "side", station], value: at };
  return { op: "batch", name, operations: [whole] };
}

/** A joint put at a station, or so many mm along a run from its `from` station; null: nowhere yet. It is at one place only. */
export function placeJoint(
  joint: string,
  place: { readonly station: string } | { readonly run: string; readonly offsetMm: number } | null,
): Operation {
  const field = (path: string, value?: unknown): Operation => ({
    ...set("joints", joint, path),
    ...(value === undefined ? {} : { value }),
  });
  const offset =
    place !== null && "run" in place
      ? { run: place.run, mm: { value: place.offsetMm, basis: "chosen" } }
      : undefined;
  const station = place !== null && "station" in place ? place.station : undefined;
  return {
    op: "batch",
    name: `Place joint ${joint}`,
    operations: [field("station", station), field("offset", offset)],
  };
}

/**
 * A station taken away with the runs that end at it. What stood there stands nowhere until somebody says where; wires told to pass it are no longer told so.
 * A joint measured along one of those runs loses that place too.
 */
export function removeStation(job: Job, station: string): Operation {
  const runs = job.runs.filter(({ from, to }) => from === station || to === station);
  const gone = new Set(runs.map(({ id }) => id));
  const operations: Operation[] = [
    ...job.parts
      .filter((one) => one.station === station)
      .map(({ id }) => set("parts", id, "station")),
    ...job.joints
      .filter((one) => one.station === station)
      .map(({ id }) => set("joints", id, "station")),
    ...job.connectors
      .filter((one) => one.station === station)
      .map(({ id }) => set("connectors", id, "station")),
    ...job.joints
      .filter(({ offset }) => offset !== undefined && gone.has(offset.run))
      .map(({ id }) => set("joints", id, "offset")),
    ...job.bodies
      .filter(({ points }) => points.some((point) => point.station === station))
      .map(({ id, points }): Operation => {
        const value = points.map(({ station: at, ...point }) =>
          at === undefined || at === station ? point : { ...point, station: at },
        );
        return { op: "set", list: "bodies", id, path: ["points"], value };
      }),
    ...job.wires
      .filter(({ via }) => via?.includes(station))
      .map(({ id, via }): Operation => {
        const value = via?.filter((one) => one !== station) ?? [];
        return {
          op: "set",
          list: "wires",
          id,
          path: ["via"],
          ...(value.length > 0 ? { value } : {}),
        };
      }),
    ...runs.map(({ id }): Operation => ({ op: "remove", list: "runs", id })),
    ...placesGone(job, [station, ...gone]),
    { op: "remove", list: "stations", id: station },
  ];
  return { op: "batch", name: `Remove ${station}`, operations };
}

/** A run taken away; a joint measured along it stands nowhere until somebody says where. */
export function removeRun(job: Job, run: string): Operation {
  const joints = job.joints.filter(({ offset }) => offset?.run === run);
  return {
    op: "batch",
    name: `Remove ${run}`,
    operations: [
      ...joints.map(({ id }) => set("joints", id, "offset")),
      { op: "remove", list: "runs", id: run },
      ...placesGone(job, [run]),
    ],
  };
}

function placesGone(job: Job, ids: readonly string[]): readonly Operation[] {
  return (["side", "diagram", "board"] as const).flatMap((sheet) =>
    ids
      .filter((id) => Object.hasOwn(job.layout[sheet] ?? {}, id))
      .map((id): Operation => ({ op: "set", list: "job", path: ["layout", sheet, id] })),
  );
}
