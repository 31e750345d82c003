import type { Job } from "../../job/index.ts";
import type { Routed } from "../../route/index.ts";

/** The whole loom of a machine along one steel rule: nought at its foremost busy place, rearwards is more. */
export interface MachineRule {
  readonly leastMm: number;
  readonly mostMm: number;
  readonly stations: readonly RuleStation[];
  readonly runs: readonly RuleRun[];
}

export interface RuleStation {
  readonly id: string;
  readonly name: string;
  readonly atMm: number;
  /** Stands off the main line. */
  readonly isBranch: boolean;
}

/** A run from its `from` station to its `to` station. */
export interface RuleRun {
  readonly id: string;
  readonly fromMm: number;
  readonly toMm: number;
  /** Outside diameter where it is thickest, as laid; null where nothing runs. */
  readonly odMm: number | null;
  /** False: its length on the rule is the distance in the side view, or an estimate. */
  readonly isMeasured: boolean;
  readonly isBranch: boolean;
}

/** A place is taken for the end of the main line before one so much further out, for each run that meets it, to four. */
const BUSY_MM = 40;
const BUSY_MOST_COUNT = 4;

/**
 * The main line is the shortest way along runs from the foremost place to the rearmost. Whatever leaves it lies on the same rule from where it leaves,
 * forwards where the side view has it further forward, else rearwards. A run with no length is as long as in the side view; where it has no place there
 * either, it is left out with what hangs on it alone.
 *
 * @param diameterOf  outside diameter of a bundle as laid, mm
 */
export function machineRule(
  job: Job,
  routed: Routed,
  diameterOf: (wires: readonly string[]) => number,
): MachineRule {
  const edges = edgesOf(job);
  const frontOf = frontness(job, edges);
  const met = [...new Set(edges.flatMap(({ from, to }) => [from, to]))].sort();
  const atMm = new Map<string, number>();
  const main = new Set<string>();
  for (const root of [...met].sort((p, q) => frontOf(p, -1) - frontOf(q, -1) || (p < q ? -1 : 1))) {
    if (atMm.has(root)) continue;
    const tree = treeFrom(edges, root);
    const [rear] = [...tree.keys()].sort(
      (p, q) => frontOf(q, 1) - frontOf(p, 1) || tree.get(q)!.mm - tree.get(p)!.mm,
    );
    const isFirst = atMm.size === 0;
    const line = wayTo(tree, rear!);
    for (const one of isFirst ? line : []) main.add(one);
    for (const [one, { before, mm }] of tree) {
      const isOnLine = line.includes(one);
      atMm.set(one, isOnLine || before === null ? mm : sidewards(job, atMm, before, one));
    }
  }
  const places = [...atMm.values()];
  return {
    leastMm: Math.min(0, ...places),
    mostMm: Math.max(0, ...places),
    stations: job.stations
      .flatMap(({ id, name }) =>
        atMm.has(id) ? [{ id, name, atMm: atMm.get(id)!, isBranch: !main.has(id) }] : [],
      )
      .sort((p, q) => p.atMm - q.atMm || (p.id < q.id ? -1 : 1)),
    runs: edges.map(({ id, from, to, isMeasured }) => ({
      id,
      fromMm: atMm.get(from)!,
      toMm: atMm.get(to)!,
      odMm: thickest(routed, id, diameterOf),
      isMeasured,
      isBranch: !(main.has(from) && main.has(to)),
    })),
  };

  function sidewards(
    { layout }: Job,
    placed: ReadonlyMap<string, number>,
    before: Edge,
    one: string,
  ): number {
    const other = before.from === one ? before.to : before.from;
    const [here, there] = [layout.side?.[one]?.xMm, layout.side?.[other]?.xMm];
    const isForward = here !== undefined && there !== undefined && here < there;
    return placed.get(other)! + (isForward ? -before.mm : before.mm);
  }
}

interface Edge {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly mm: number;
  readonly isMeasured: boolean;
}

function edgesOf(job: Job): readonly Edge[] {
  const side = job.layout.side ?? {};
  return job.runs.flatMap(({ id, from, to, lengthMm }) => {
    const isMeasured = lengthMm !== undefined && lengthMm.basis !== "estimated";
    const [a, b] = [side[from], side[to]];
    const apartMm =
      a === undefined || b === undefined ? undefined : Math.hypot(a.xMm - b.xMm, a.yMm - b.yMm);
    const mm = lengthMm?.value ?? apartMm;
    return mm === undefined ? [] : [{ id, from, to, mm, isMeasured }];
  });
}

/** How far back a place is; `way` −1 draws busy places forward, 1 rearward. Without a side view: the order of the job's list. */
function frontness(job: Job, edges: readonly Edge[]): (station: string, way: -1 | 1) => number {
  const order = new Map(job.stations.map(({ id }, i) => [id, i]));
  const busy = new Map<string, number>();
  for (const { from, to } of edges) {
    for (const one of [from, to]) busy.set(one, (busy.get(one) ?? 0) + 1);
  }
  return (station, way) => {
    const xMm = job.layout.side?.[station]?.xMm;
    if (xMm === undefined) return order.get(station)!;
    return xMm + way * BUSY_MM * Math.min(BUSY_MOST_COUNT, busy.get(station) ?? 0);
  };
}

interface Reached {
  /** Edge it was reached by; null for the root. */
  readonly before: Edge | null;
  readonly mm: number;
}

/** Every place that can be reached by its shortest way, nearest first. */
function treeFrom(edges: readonly Edge[], root: string): ReadonlyMap<string, Reached> {
  const tree = new Map<string, Reached>([[root, { before: null, mm: 0 }]]);
  for (;;) {
    const next = edges
      .flatMap((edge) => {
        if (tree.has(edge.from) === tree.has(edge.to)) return [];
        const [known, to] = tree.has(edge.from) ? [edge.from, edge.to] : [edge.to, edge.from];
        return [{ edge, to, mm: tree.get(known)!.mm + edge.mm }];
      })
      .sort((p, q) => p.mm - q.mm || (p.edge.id < q.edge.id ? -1 : 1))[0];
    if (next === undefined) return tree;
    tree.set(next.to, { before: next.edge, mm: next.mm });
  }
}

function wayTo(tree: ReadonlyMap<string, Reached>, end: string): readonly string[] {
  const way = [end];
  for (let before = tree.get(end)!.before; before !== null; ) {
    const last = way.at(-1)!;
    const next = before.from === last ? before.to : before.from;
    way.push(next);
    before = tree.get(next)!.before;
  }
  return way;
}

function thickest(
  { stretches }: Routed,
  run: string,
  diameterOf: (wires: readonly string[]) => number,
): number | null {
  const own = stretches.filter((stretch) => stretch.run === run && stretch.wires.length > 0);
  return own.length === 0 ? null : Math.max(...own.map(({ wires }) => diameterOf(wires)));
}
