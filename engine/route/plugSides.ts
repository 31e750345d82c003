import type { Job } from "../job/index.ts";
import type { Routed, WireRoute } from "./routed.ts";
import { type StepEnds, stepEnds } from "./stepEnds.ts";

export interface PlugSides {
  /** Which end of each wire lies on the plug's side, in the order asked. */
  readonly wires: readonly { readonly wire: string; readonly plugSide: "from" | "to" }[];
  /** Wires that come to the station and go from it on the same side: no connector there cuts them. */
  readonly sameSide: readonly string[];
}

/** Runs on the plug's side and on the socket's. */
interface Sides {
  readonly plug: Set<string>;
  readonly socket: Set<string>;
}

/** Runs a wire comes by and goes by; null where it begins or ends at the station, or its way is not known. */
interface Passing {
  readonly wire: string;
  readonly come: string | null;
  readonly go: string | null;
}

/**
 * Which piece of each wire goes to the plug half of a connector at a station, so that all that come from one side of the loom lie in one half. The first
 * wire comes by the plug's side, unless the connector is there already: then what lies in it says which side is which.
 */
export function plugSides(
  job: Job,
  routed: Routed,
  at: { readonly station: string | null; readonly connector: string | null },
  wires: readonly string[],
): PlugSides {
  const endsOf = stepEnds(job);
  const passing = wires.map((wire) => passingOf(routed.wires.get(wire), wire, at.station, endsOf));
  const sides = sidesNow(job, routed, at, endsOf);
  const found = new Map<string, "from" | "to" | "same">();
  while (found.size < passing.length) {
    const open = passing.filter(({ wire }) => !found.has(wire));
    const known = open.find((one) => sideOf(one, sides) !== null) ?? open[0]!;
    const side = sideOf(known, sides) ?? "from";
    found.set(known.wire, side);
    if (side !== "same") lay(known, side, sides);
  }
  return {
    wires: wires.flatMap((wire) => {
      const plugSide = found.get(wire)!;
      return plugSide === "same" ? [] : [{ wire, plugSide }];
    }),
    sameSide: wires.filter((wire) => found.get(wire) === "same"),
  };
}

function passingOf(
  route: WireRoute | undefined,
  wire: string,
  station: string | null,
  endsOf: (step: WireRoute["steps"][number]) => StepEnds,
): Passing {
  if (route === undefined || station === null) return { wire, come: null, go: null };
  const come = route.steps.findLast((step) => endsOf(step).end === station)?.run ?? null;
  const go = route.steps.find((step) => endsOf(step).start === station)?.run ?? null;
  return { wire, come, go };
}

function sideOf({ come, go }: Passing, { plug, socket }: Sides): "from" | "to" | "same" | null {
  const isIn = (side: Set<string>, run: string | null): boolean => run !== null && side.has(run);
  if ((isIn(plug, come) && isIn(plug, go)) || (isIn(socket, come) && isIn(socket, go)))
    return "same";
  if (isIn(plug, come) || isIn(socket, go)) return "from";
  if (isIn(socket, come) || isIn(plug, go)) return "to";
  return null;
}

function lay({ come, go }: Passing, side: "from" | "to", { plug, socket }: Sides): void {
  const [near, far] = side === "from" ? [plug, socket] : [socket, plug];
  if (come !== null) near.add(come);
  if (go !== null) far.add(go);
}

/** By the wires that already lie in the connector. */
function sidesNow(
  job: Job,
  routed: Routed,
  { station, connector }: { readonly station: string | null; readonly connector: string | null },
  endsOf: (step: WireRoute["steps"][number]) => StepEnds,
): Sides {
  const sides: Sides = { plug: new Set(), socket: new Set() };
  if (connector === null) return sides;
  for (const { id, from, to } of job.wires) {
    for (const pin of [from, to]) {
      if (!pin.startsWith(`${connector}.`)) continue;
      const { come, go } = passingOf(routed.wires.get(id), id, station, endsOf);
      const run = pin === to ? come : go;
      if (run !== null) sides[pin.endsWith("p") ? "plug" : "socket"].add(run);
    }
  }
  return sides;
}
