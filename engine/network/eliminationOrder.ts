/** One node taken out of the graph: who it was, and whom it was joined to at that moment. */
export interface EliminatedNode {
  readonly node: number;
  readonly neighbours: readonly number[];
}

/**
 * Minimum-degree elimination order of the graph on nodes 1 .. nodeCount − 1 (node 0, the reference, is never eliminated).
 * Taking a node out joins all its neighbours (star-mesh), which is the fill of the factor. Of equal degrees the one fewest
 * others must precede comes first: a chain goes by every second node instead of from end to end, so that a processor has
 * independent work at hand. Then the lower node.
 * @param latePenaltyCount added to the degree of the nodes in `late`, so that they tend to come last
 */
export function eliminationOrder(
  nodeCount: number,
  pairs: readonly (readonly [number, number])[],
  late: ReadonlySet<number>,
  latePenaltyCount: number,
): EliminatedNode[] {
  const neighbours = graph(nodeCount, pairs);
  const height = new Int32Array(nodeCount);
  /** Rank each node stands in the queue with; an entry with another rank is out of date. */
  const rank = new Float64Array(nodeCount);
  const queue: number[] = [];
  const enqueue = (node: number): void => {
    const degree = neighbours[node]!.size + (late.has(node) ? latePenaltyCount : 0);
    const next = (degree * nodeCount + height[node]!) * nodeCount + node;
    if (next === rank[node]) return;
    rank[node] = next;
    push(queue, next);
  };
  for (let node = 1; node < nodeCount; node++) enqueue(node);
  const order: EliminatedNode[] = [];
  while (queue.length > 0) {
    const least = pop(queue);
    const node = least % nodeCount;
    if (rank[node] !== least) continue;
    rank[node] = GONE;
    const around = [...neighbours[node]!];
    order.push({ node, neighbours: around });
    joinNeighbours(neighbours, node);
    for (const one of around) {
      height[one] = Math.max(height[one]!, height[node]! + 1);
      enqueue(one);
    }
  }
  return order;
}

const GONE = -1;

/** Adds to a heap, the least first. */
function push(heap: number[], value: number): void {
  let at = heap.length;
  heap.push(value);
  while (at > 0) {
    const above = (at - 1) >> 1;
    if (heap[above]! <= value) break;
    heap[at] = heap[above]!;
    at = above;
  }
  heap[at] = value;
}

/** Takes the least out of a heap that is not empty. */
function pop(heap: number[]): number {
  const least = heap[0]!;
  const last = heap.pop()!;
  const count = heap.length;
  if (count === 0) return least;
  let at = 0;
  for (;;) {
    let below = 2 * at + 1;
    if (below >= count) break;
    if (below + 1 < count && heap[below + 1]! < heap[below]!) below++;
    if (heap[below]! >= last) break;
    heap[at] = heap[below]!;
    at = below;
  }
  heap[at] = last;
  return least;
}

function graph(nodeCount: number, pairs: readonly (readonly [number, number])[]): Set<number>[] {
  const neighbours = Array.from({ length: nodeCount }, () => new Set<number>());
  for (const [a, b] of pairs) {
    if (a === b || a === 0 || b === 0) continue;
    neighbours[a]!.add(b);
    neighbours[b]!.add(a);
  }
  return neighbours;
}

function joinNeighbours(neighbours: Set<number>[], gone: number): void {
  const around = [...neighbours[gone]!];
  for (const one of around) {
    neighbours[one]!.delete(gone);
    for (const other of around) if (other !== one) neighbours[one]!.add(other);
  }
}
