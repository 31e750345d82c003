/** A directed pair of capacities on one edge: how much may flow from `from` to `to` and back. `Infinity` cannot be cut. */
export interface CutEdge {
  readonly from: number;
  readonly to: number;
  readonly forward: number;
  readonly backward: number;
}

export interface MinimumCut {
  /** Sum of the capacities cut; `Infinity` when nothing finite separates the two. */
  readonly total: number;
  /** Indices of the edges cut, those nearest the target; empty when they cannot be separated or are apart already. */
  readonly edges: readonly number[];
  /** Number of augmenting paths found: 0 when source and target are apart. */
  readonly pathCount: number;
}

/**
 * Cheapest set of edges whose removal parts source from target (max-flow min-cut; shortest augmenting paths, Edmonds & Karp 1972).
 * Of several cheapest sets the one nearest the target is taken.
 */
export function minimumCut(
  edges: readonly CutEdge[],
  nodeCount: number,
  source: number,
  target: number,
): MinimumCut {
  const arcs = residualArcs(edges, nodeCount);
  let total = 0;
  let pathCount = 0;
  while (source !== target) {
    const via = pathBack(arcs, nodeCount, source, target);
    if (via === null) break;
    pathCount += 1;
    let most = Infinity;
    for (let node = target; node !== source; node = arcs.tail[via[node]!]!) {
      most = Math.min(most, arcs.room[via[node]!]!);
    }
    if (most === Infinity) return { total: Infinity, edges: [], pathCount };
    for (let node = target; node !== source; node = arcs.tail[via[node]!]!) {
      arcs.room[via[node]!]! -= most;
      arcs.room[via[node]! ^ 1]! += most;
    }
    total += most;
  }
  return { total, edges: cutNearTarget(edges, arcs, nodeCount, target), pathCount };
}

interface Arcs {
  readonly tail: number[];
  readonly head: number[];
  readonly room: number[];
  readonly out: number[][];
}

function residualArcs(edges: readonly CutEdge[], nodeCount: number): Arcs {
  const arcs: Arcs = {
    tail: [],
    head: [],
    room: [],
    out: Array.from({ length: nodeCount }, () => []),
  };
  edges.forEach(({ from, to, forward, backward }, edge) => {
    arcs.tail.push(from, to);
    arcs.head.push(to, from);
    arcs.room.push(forward, backward);
    arcs.out[from]!.push(2 * edge);
    arcs.out[to]!.push(2 * edge + 1);
  });
  return arcs;
}

/** Arc by which each node is reached on a shortest path with room, or null when the target is out of reach. */
function pathBack(
  arcs: Arcs,
  nodeCount: number,
  source: number,
  target: number,
): Int32Array | null {
  const via = new Int32Array(nodeCount).fill(-1);
  const seen = new Uint8Array(nodeCount);
  const queue = [source];
  seen[source] = 1;
  for (let i = 0; i < queue.length; i++) {
    for (const arc of arcs.out[queue[i]!]!) {
      const head = arcs.head[arc]!;
      if (arcs.room[arc]! <= 0 || seen[head]) continue;
      seen[head] = 1;
      via[head] = arc;
      if (head === target) return via;
      queue.push(head);
    }
  }
  return null;
}

/** Edges that lead into the part from which the target can still be reached. */
function cutNearTarget(
  edges: readonly CutEdge[],
  arcs: Arcs,
  nodeCount: number,
  target: number,
): readonly number[] {
  const reaches = new Uint8Array(nodeCount);
  const queue = [target];
  reaches[target] = 1;
  for (let i = 0; i < queue.length; i++) {
    for (const arc of arcs.out[queue[i]!]!) {
      const head = arcs.head[arc]!;
      if (reaches[head] || arcs.room[arc ^ 1]! <= 0) continue;
      reaches[head] = 1;
      queue.push(head);
    }
  }
  return edges.flatMap(({ from, to, forward, backward }, edge) => {
    const into = reaches[to]! > reaches[from]! && forward > 0;
    const back = reaches[from]! > reaches[to]! && backward > 0;
    return into || back ? [edge] : [];
  });
}
