import type { Link, LinkKind, MachineGraph } from "./machineGraph.ts";

/** How far a point is from the live post and from earth, and its place in the order from feed to earth. */
export interface Levels {
  readonly fromLive: ReadonlyMap<string, number>;
  readonly toEarth: ReadonlyMap<string, number>;
  /** Without any switch or relay in between: live with the key out. */
  readonly alwaysLive: ReadonlySet<string>;
  /** The link each point is first reached by from the live post. */
  readonly feedOf: ReadonlyMap<string, Link>;
  readonly returnOf: ReadonlyMap<string, Link>;
  readonly side: (point: string) => "live" | "between" | "earth";
  /** Negative: `a` stands above `b`. */
  readonly compare: (a: string, b: string) => number;
}

const PASSED: readonly LinkKind[] = ["wire", "cavity", "contact", "fuse", "through"];
/** What joins a point to earth whatever the switches do. */
const UNSWITCHED: readonly LinkKind[] = ["wire", "cavity", "bond"];
const PASSED_TO_EARTH: readonly LinkKind[] = [...PASSED, "bond"];

/**
 * Order of the points of a machine from feed to earth: those the live post reaches without passing a load by their distance from it, those earth reaches
 * by their distance to it, those between two loads in between.
 */
export function levelsOf(graph: MachineGraph): Levels {
  const live = reach(graph, [...graph.livePosts, ...generatorPosts(graph)], PASSED);
  const earth = reach(graph, [...graph.earthedPosts, ...graph.bodies], PASSED_TO_EARTH, false);
  const always = reach(graph, graph.livePosts, ["wire", "cavity", "fuse", "through"]);
  const bare = reach(graph, [...graph.earthedPosts, ...graph.bodies], UNSWITCHED, false);
  const any = reach(graph, graph.livePosts, [...PASSED, "load", "coil"]);
  const side = (point: string): "live" | "between" | "earth" => {
    const [up, down] = [live.distance.get(point), earth.distance.get(point)];
    if (bare.distance.has(point)) return "earth";
    if (up !== undefined && (down === undefined || up <= down)) return "live";
    return down === undefined ? "between" : "earth";
  };
  const rank = (point: string): number => {
    switch (side(point)) {
      case "live":
        return live.distance.get(point)!;
      case "between":
        return 1e6 + (any.distance.get(point) ?? 0);
      case "earth":
        return 3e6 - earth.distance.get(point)!;
    }
  };
  return {
    fromLive: live.distance,
    toEarth: earth.distance,
    alwaysLive: new Set(always.distance.keys()),
    feedOf: live.by,
    returnOf: earth.by,
    side,
    compare: (a, b) => rank(a) - rank(b) || (a < b ? -1 : a > b ? 1 : 0),
  };
}

/** Ends of generator windings that stand alone: what they feed is not joined to the battery, and they are not earthed themselves. */
function generatorPosts(graph: MachineGraph): readonly string[] {
  const ofBattery = reach(graph, graph.livePosts, PASSED).distance;
  const earthed = reach(
    graph,
    [...graph.earthedPosts, ...graph.bodies],
    ["wire", "cavity", "bond"],
  );
  return graph.windingPins.filter((pin) => !ofBattery.has(pin) && !earthed.distance.has(pin));
}

/** A diode is passed the way current can go through it from the live post. */
function isBlocked({ isLiveNegative }: MachineGraph, link: Link, at: string): boolean {
  if (link.part?.kind !== "diode" && link.part?.kind !== "rectifier") return false;
  return at !== (isLiveNegative ? link.b : link.a);
}

/** Breadth first over links of the kinds given; ties by the order of the document. */
function reach(
  graph: MachineGraph,
  from: readonly string[],
  kinds: readonly LinkKind[],
  isFeed = true,
): { readonly distance: Map<string, number>; readonly by: Map<string, Link> } {
  const distance = new Map(from.map((point) => [point, 0]));
  const by = new Map<string, Link>();
  const queue = [...from];
  for (let i = 0; i < queue.length; i++) {
    const at = queue[i]!;
    for (const link of graph.linksAt.get(at) ?? []) {
      if (!kinds.includes(link.kind) || (isFeed && isBlocked(graph, link, at))) continue;
      const next = link.a === at ? link.b : link.a;
      if (distance.has(next)) continue;
      distance.set(next, distance.get(at)! + 1);
      by.set(next, link);
      queue.push(next);
    }
  }
  return { distance, by };
}
