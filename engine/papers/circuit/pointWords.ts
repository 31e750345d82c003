import type { Job } from "../../job/index.ts";
import { numberOf } from "../wireRows.ts";
import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";

/** Points of a machine in the words of a sheet. */
export interface PointWords {
  /** Where a path comes from that does not begin at the battery. */
  readonly from: (point: string) => string;
  /** Where it goes on to. */
  readonly to: (point: string) => string;
  readonly dot: (point: string) => string;
  /** "frame at battery box, bolt BAT". */
  readonly body: (point: string, by: Link | null) => string;
  readonly connector: (id: string) => string;
}

export function placeWords(job: Job, graph: MachineGraph, levels: Levels): PointWords {
  const station = new Map(job.stations.map(({ id, name }) => [id, name]));
  const joints = new Map(job.joints.map((joint) => [joint.id, joint]));
  const parts = new Map(job.parts.map((part) => [part.id, part]));
  const bodies = new Map(job.bodies.map((body) => [body.id, body]));
  const connectors = new Map(job.connectors.map((one) => [one.id, one]));
  const circuits = new Map(job.circuits.map(({ id, name }) => [id, name]));
  const owner = (point: string): string => point.split(".")[0]!;
  const what = (point: string): string => {
    const joint = joints.get(point);
    if (joint) return joint.name ? `${point}, ${joint.name}` : `joint ${point}`;
    const part = parts.get(owner(point));
    if (part) return `${point.replace(".", " ")}, ${part.name}`;
    const body = bodies.get(point);
    if (body) return `${point}, ${body.name}`;
    return connectors.has(owner(point)) ? `${owner(point)} cavity ${point.split(".")[1]}` : point;
  };
  const others = (point: string): string => {
    const wires = (graph.linksAt.get(point) ?? []).flatMap(({ wire }) => wire ?? []);
    const named = [...new Set(wires.map(({ circuit }) => circuits.get(circuit) ?? circuit))];
    return named.join("; ");
  };
  void numberOf;
  return {
    from: (point) => `from ${what(point)}${levels.alwaysLive.has(point) ? ", always live" : ""}`,
    to: (point) => {
      const onward = others(point);
      return `to ${what(point)}${joints.has(point) && onward !== "" ? ` (${onward})` : ""}`;
    },
    dot: (point) => {
      const joint = joints.get(point);
      return joint ? point : "";
    },
    body: (point, by) => {
      const body = bodies.get(point)!;
      const pin = by === null ? "" : by.a === point ? by.pinA : by.pinB;
      const spot = body.points.find(({ id }) => `${point}.${id}` === pin);
      const place = spot?.name ?? station.get(spot?.station ?? "") ?? "";
      return [spot ? `${point} ${spot.id}` : body.name, place].filter(Boolean).join(", ");
    },
    connector: (id) => {
      const one = connectors.get(id);
      return one === undefined ? "" : (station.get(one.station ?? "") ?? one.name);
    },
  };
}
