import type { Levels } from "./levels.ts";
import type { Link, MachineGraph } from "./machineGraph.ts";

/** A link the way it stands on a sheet: current comes from above. */
export interface Placed {
  readonly link: Link;
  readonly above: string;
  readonly below: string;
}

/**
 * What one circuit's sheet shows: its own wires, the parts between them, the way up to the fuse that feeds it (where it has none of its own) and the
 * way from its loads down to earth.
 */
export function sheetLinks(
  circuit: string,
  graph: MachineGraph,
  levels: Levels,
): readonly Placed[] {
  const chosen = new Map<string, Placed>();
  const add = (link: Link): void => {
    if (!chosen.has(link.key)) chosen.set(link.key, placed(link, levels));
  };
  const own = graph.links.filter(({ wire }) => wire?.circuit === circuit);
  for (const link of own) add(link);
  const ownPoints = new Set(own.flatMap(({ a, b }) => [a, b]));
  const isEarths = own.every(
    ({ a, b }) => levels.side(a) === "earth" && levels.side(b) === "earth",
  );
  for (const point of ownPoints) {
    for (const link of graph.linksAt.get(point) ?? []) {
      const { above, below } = placed(link, levels);
      const both = ownPoints.has(link.a) && ownPoints.has(link.b);
      const toEarth = levels.side(below) === "earth";
      if (belongs(link, { above: ownPoints.has(above), both, isEarths, toEarth })) add(link);
      if (isUsed(link, { above: ownPoints.has(above), isEarths }))
        follow(below, levels.returnOf, add);
    }
  }
  for (const { link } of [...chosen.values()]) {
    if (link.kind === "contact" && !isEarths) {
      const { below } = placed(link, levels);
      if (levels.side(below) === "earth") follow(below, levels.returnOf, add);
    }
  }
  if (!isEarths && ![...chosen.values()].some(({ link }) => link.kind === "fuse")) {
    for (const top of topsOf(chosen)) followUp(top, levels, add);
  }
  return [...chosen.values()];
}

/** Where a link stands to the circuit's own wires. */
interface At {
  readonly above: boolean;
  readonly both: boolean;
  readonly isEarths: boolean;
  readonly toEarth: boolean;
}

function belongs({ kind }: Link, { above, both, isEarths, toEarth }: At): boolean {
  switch (kind) {
    case "cavity":
      return true;
    case "contact":
      return both || (above && toEarth && !isEarths);
    case "through":
    case "source":
      return both;
    case "fuse":
      return both || above;
    case "load":
    case "coil":
      return !isEarths && (both || above);
    default:
      return false;
  }
}

const isUsed = ({ kind }: Link, { above, isEarths }: Pick<At, "above" | "isEarths">): boolean =>
  (kind === "load" || kind === "coil") && above && !isEarths;

const placed = (link: Link, { compare }: Levels): Placed =>
  compare(link.a, link.b) <= 0
    ? { link, above: link.a, below: link.b }
    : { link, above: link.b, below: link.a };

/** Points nothing on the sheet comes down to. */
function topsOf(chosen: ReadonlyMap<string, Placed>): readonly string[] {
  const below = new Set([...chosen.values()].map((one) => one.below));
  return [...new Set([...chosen.values()].map(({ above }) => above))].filter(
    (at) => !below.has(at),
  );
}

/** Step by step towards where the map was grown from. */
function follow(from: string, by: ReadonlyMap<string, Link>, add: (link: Link) => void): void {
  let at = from;
  for (let link = by.get(at); link !== undefined; link = by.get(at)) {
    add(link);
    at = link.a === at ? link.b : link.a;
  }
}

/** Up to the first fuse, that fuse included; without one up to the post. */
function followUp(from: string, levels: Levels, add: (link: Link) => void): void {
  let at = from;
  for (let link = levels.feedOf.get(at); link !== undefined; link = levels.feedOf.get(at)) {
    add(link);
    if (link.kind === "fuse") return;
    at = link.a === at ? link.b : link.a;
  }
}
