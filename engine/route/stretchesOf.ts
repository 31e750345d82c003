import type { Ambients } from "./ambientOf.ts";
import type { LoomEdge, LoomGraph } from "./loomGraph.ts";
import type { Stretch, WireRoute } from "./routed.ts";

/**
 * Cuts every run into stretches with the same wires from end to end, one list a loom: the bundles.
 * Wires to be removed lie in none; a wire of no loom lies alone; a wire that goes out and back is in the list twice.
 */
export function stretchesOf(
  graph: LoomGraph,
  routes: readonly WireRoute[],
  ambients: Ambients,
): readonly Stretch[] {
  const byLoom = new Map<string, Map<string, string[]>>();
  for (const route of routes) {
    if (route.status === "remove") continue;
    const loom = loomKey(route);
    const bundles = byLoom.get(loom) ?? new Map<string, string[]>();
    byLoom.set(loom, bundles);
    for (const step of route.steps) {
      const key = edgeKey(step.run, step.enterMm, step.leaveMm);
      const wires = bundles.get(key) ?? [];
      wires.push(route.wire);
      bundles.set(key, wires);
    }
  }
  const looms = new Map(routes.map((route) => [loomKey(route), route.loom]));
  return [...byLoom.keys()].sort().flatMap((key) =>
    stretchesOfLoom({
      key,
      loom: looms.get(key) ?? null,
      graph,
      bundles: byLoom.get(key)!,
      ambients,
    }),
  );
}

const loomKey = (route: WireRoute): string => route.loom ?? `loose:${route.wire}`;

/** Both directions of one piece of run give the same key. */
function edgeKey(run: string, enterMm: number | null, leaveMm: number | null): string {
  const nearMm = Math.min(enterMm ?? Number.MAX_VALUE, leaveMm ?? Number.MAX_VALUE);
  return `${run} ${nearMm}`;
}

interface LoomBundles {
  readonly key: string;
  readonly loom: string | null;
  readonly graph: LoomGraph;
  readonly bundles: ReadonlyMap<string, readonly string[]>;
  readonly ambients: Ambients;
}

function stretchesOfLoom(loom: LoomBundles): readonly Stretch[] {
  const pieces: { edges: LoomEdge[]; wires: readonly string[] }[] = [];
  for (const edge of loom.graph.edges) {
    const wires = loom.bundles.get(edgeKey(edge.run, edge.enterMm, edge.leaveMm));
    if (wires === undefined) continue;
    const sorted = [...wires].sort();
    const last = pieces.at(-1);
    const goesOn = last?.edges.at(-1)?.run === edge.run && last.edges.at(-1)?.b === edge.a;
    if (last !== undefined && goesOn && sameWires(last.wires, sorted)) last.edges.push(edge);
    else pieces.push({ edges: [edge], wires: sorted });
  }
  const countOfRun = new Map<string, number>();
  return pieces.map(({ edges, wires }) => {
    const { run, enterMm, flex } = edges[0]!;
    const { leaveMm } = edges.at(-1)!;
    const count = (countOfRun.get(run) ?? 0) + 1;
    countOfRun.set(run, count);
    return {
      id: `${loom.key}/${run}${count > 1 ? `#${count}` : ""}`,
      loom: loom.loom,
      run,
      enterMm,
      leaveMm,
      lengthMm: leaveMm === null ? null : leaveMm - enterMm,
      flex,
      ambientC: loom.ambients.ofRun(run),
      wires,
    };
  });
}

const sameWires = (a: readonly string[], b: readonly string[]): boolean =>
  a.length === b.length && a.every((wire, i) => wire === b[i]);
