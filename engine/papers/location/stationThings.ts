import type { Job, Part } from "../../job/index.ts";
import type { SideView } from "../../layout/index.ts";
import { compareNumbers } from "../wireRows.ts";

/** Everything electrical at one station. */
export interface StationThings {
  readonly id: string;
  /** From 1, front to rear; 0 where it has no place in side view. */
  readonly orderCount: number;
  readonly name: string;
  readonly parts: readonly Part[];
  readonly joints: readonly string[];
  readonly connectors: readonly string[];
  /** Points of bodies that hold an earth wire, BODY.POINT. */
  readonly earths: readonly string[];
}

/** Stations front to rear with what sits there, then those nobody has placed. */
export function stationThings(job: Job, view: SideView): readonly StationThings[] {
  const orders = new Map(view.stations.map(({ station, orderCount }) => [station, orderCount]));
  const wired = new Set(
    job.wires.flatMap(({ from, to, status }) => (status === "remove" ? [] : [from, to])),
  );
  return job.stations
    .map(
      ({ id, name }): StationThings => ({
        id,
        name,
        orderCount: orders.get(id) ?? 0,
        parts: job.parts
          .filter(({ station, status }) => station === id && status !== "remove")
          .sort((p, q) => compareNumbers(p.id, q.id)),
        joints: job.joints
          .filter(
            ({ station, offset, status }) =>
              station === id && offset === undefined && status !== "remove",
          )
          .map((joint) => joint.id)
          .sort(compareNumbers),
        connectors: job.connectors
          .filter(({ station, status }) => station === id && status !== "remove")
          .map((connector) => connector.id)
          .sort(compareNumbers),
        earths: job.bodies
          .flatMap((body) =>
            body.points.map((point) => ({ ref: `${body.id}.${point.id}`, at: point.station })),
          )
          .filter(({ ref, at }) => at === id && wired.has(ref))
          .map(({ ref }) => ref)
          .sort(compareNumbers),
      }),
    )
    .sort((p, q) => (p.orderCount || 1e6) - (q.orderCount || 1e6) || compareNumbers(p.id, q.id));
}
