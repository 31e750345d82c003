import type { Levels } from "../circuit/levels.ts";
import type { Link, MachineGraph } from "../circuit/machineGraph.ts";
import type { DiagramNode, DiagramSegment, DiagramStep } from "./diagramStep.ts";

export interface MachinePaths {
  readonly nodes: readonly DiagramNode[];
  readonly segments: readonly DiagramSegment[];
}

/** A link the way it stands: current comes from above. */
interface Standing {
  readonly link: Link;
  readonly above: string;
  readonly below: string;
}

/** Everything that decides where paths are cut. */
interface Cuts {
  readonly outs: ReadonlyMap<string, readonly Standing[]>;
  readonly nodes: ReadonlySet<string>;
  /** Earths drawn as a sign of their own at every path. */
  readonly earths: ReadonlySet<string>;
}

/**
 * The whole machine as current paths from the live post down, every link once. Earth is cut to a sign at the foot of each path: bodies, and joints that
 * only gather earths; the wires that lead on from such a joint stand in paths of their own.
 */
export function machinePaths(graph: MachineGraph, levels: Levels): MachinePaths {
  const earths = earthSigns(graph);
  const all = graph.links.filter(isDrawn(graph)).map((link) => standing(link, levels, graph));
  const outs = grouped(all, ({ above }) => above);
  const ins = grouped(all, ({ below }) => below);
  const points = [...new Set(all.flatMap(({ above, below }) => [above, below]))].sort(
    levels.compare,
  );
  const live = new Set(graph.livePosts);
  const nodes = new Set(
    points.filter((point) => {
      if (earths.has(point)) return false;
      const [inCount, outCount] = [ins.get(point)?.length ?? 0, outs.get(point)?.length ?? 0];
      const isPassed = inCount === 1 && outCount === 1;
      if (isPassed) return graph.joints.has(point) || meetsOnPin(point, ins, outs);
      return inCount > 1 || outCount > 1 || (live.has(point) && outCount > 0);
    }),
  );
  const cuts: Cuts = { outs, nodes, earths };
  const segments = points.flatMap((point) => {
    const isPassed = !nodes.has(point) && !earths.has(point) && ins.has(point);
    return isPassed ? [] : (outs.get(point) ?? []).map((first) => segmentFrom(first, cuts));
  });
  return {
    segments,
    nodes: [...nodes].map((id) => ({
      id,
      isRail: live.has(id) && !ins.has(id),
      isLow: isBelowLoads(id, cuts),
    })),
  };
}

/** Two wires on one pin of a part that has no function between its pins there: the pin is named. */
function meetsOnPin(
  point: string,
  ins: ReadonlyMap<string, readonly Standing[]>,
  outs: ReadonlyMap<string, readonly Standing[]>,
): boolean {
  const kinds = [...ins.get(point)!, ...outs.get(point)!].map(({ link }) => link.kind);
  return kinds.every((kind) => kind === "wire");
}

/** Bonds are told at the foot; a cavity with no wire in it is blank. */
const isDrawn =
  ({ linksAt }: MachineGraph) =>
  (link: Link): boolean => {
    if (link.kind === "bond") return false;
    if (link.kind !== "cavity") return true;
    return [link.a, link.b].some((at) => linksAt.get(at)!.length > 1);
  };

/** Bodies, pins bonded to one, joints that earth reaches by wire alone, and the earthed post where several wires meet on it. */
function earthSigns(graph: MachineGraph): ReadonlySet<string> {
  const reached = new Set([...graph.bodies, ...graph.earthedPosts]);
  const bonded = new Set<string>(graph.bodies);
  const queue = [...reached];
  for (let i = 0; i < queue.length; i++) {
    for (const link of graph.linksAt.get(queue[i]!) ?? []) {
      if (!["wire", "cavity", "bond"].includes(link.kind)) continue;
      const next = link.a === queue[i] ? link.b : link.a;
      if (link.kind === "bond" && graph.bodies.has(queue[i]!)) bonded.add(next);
      if (reached.has(next)) continue;
      reached.add(next);
      queue.push(next);
    }
  }
  const posts = graph.earthedPosts.filter((post) => wireCount(graph, post) !== 1);
  return new Set([...bonded, ...[...graph.joints].filter((id) => reached.has(id)), ...posts]);
}

const wireCount = ({ linksAt }: MachineGraph, point: string): number =>
  (linksAt.get(point) ?? []).filter(({ kind }) => kind === "wire").length;

function standing(link: Link, { compare }: Levels, { bodies }: MachineGraph): Standing {
  const isDown = bodies.has(link.b)
    ? !bodies.has(link.a) || compare(link.a, link.b) <= 0
    : !bodies.has(link.a) && compare(link.a, link.b) <= 0;
  return isDown ? { link, above: link.a, below: link.b } : { link, above: link.b, below: link.a };
}

function grouped(
  all: readonly Standing[],
  key: (one: Standing) => string,
): Map<string, Standing[]> {
  const groups = new Map<string, Standing[]>();
  for (const one of all) {
    const list = groups.get(key(one));
    if (list) list.push(one);
    else groups.set(key(one), [one]);
  }
  return groups;
}

function segmentFrom(first: Standing, { outs, nodes, earths }: Cuts): DiagramSegment {
  const steps: DiagramStep[] = [];
  const startsAtNode = nodes.has(first.above);
  if (!startsAtNode) steps.push({ kind: "head", point: first.above });
  let at = first;
  for (;;) {
    steps.push(stepOf(at));
    const { below } = at;
    const ends = { id: first.link.key, from: startsAtNode ? first.above : null, steps };
    if (earths.has(below)) {
      steps.push({ kind: "earth", point: below, by: at.link });
      return { ...ends, to: null };
    }
    if (nodes.has(below)) return { ...ends, to: below };
    const next = outs.get(below)?.[0];
    if (next === undefined) {
      steps.push({ kind: "terminal", point: below });
      return { ...ends, to: null };
    }
    at = next;
  }
}

function stepOf({ link, above }: Standing): DiagramStep {
  const [pinAbove, pinBelow] = link.a === above ? [link.pinA, link.pinB] : [link.pinB, link.pinA];
  if (link.kind === "wire") return { kind: "wire", link };
  if (link.kind === "cavity") return { kind: "cavity", link, pinAbove };
  return { kind: "part", link, pinAbove, pinBelow };
}

/** Whether nothing but wire, cavity and contact leads on from a node to earth. */
function isBelowLoads(node: string, { outs, earths }: Cuts): boolean {
  const seen = new Set<string>([node]);
  const queue = [node];
  let hasEarth = false;
  for (let i = 0; i < queue.length; i++) {
    for (const { link, below } of outs.get(queue[i]!) ?? []) {
      if (!["wire", "cavity"].includes(link.kind)) return false;
      if (earths.has(below)) hasEarth = true;
      else if (!seen.has(below)) {
        seen.add(below);
        queue.push(below);
      }
    }
  }
  return hasEarth;
}
