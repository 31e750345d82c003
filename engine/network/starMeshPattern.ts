import { type EliminatedNode, eliminationOrder } from "./eliminationOrder.ts";

/**
 * Where everything goes when a network of conductances is eliminated node by node. Positions 0 .. n − 1 are the unknown nodes
 * in elimination order; position n is the reference. Column j lists the conductances from position j to later positions; its
 * last entry is always the one to the reference, so that the diagonal is a plain sum and nothing is ever subtracted.
 */
export interface StarMeshPattern {
  readonly unknownCount: number;
  /** Position of each node (size nodeCount; node 0 is at n), and the node at each position (size n + 1). */
  readonly positionOfNode: Int32Array;
  readonly nodeAtPosition: Int32Array;
  /** Column pointers (size n + 1) and the row position of each entry. */
  readonly columnStart: Int32Array;
  readonly rowIndex: Int32Array;
  /** For each column, each pair p < q of its entries in turn: the entry joining their two rows. Pointers have size n + 1. */
  readonly updateStart: Int32Array;
  readonly updateTarget: Int32Array;
  /** Columns from here on change within a solve (they touch a nonlinear branch, or lie above one that does). */
  readonly splitColumn: number;
  /** Entry joining two positions; undefined where the pattern holds none. */
  entryIndex(onePosition: number, otherPosition: number): number | undefined;
}

/** Penalties tried on nodes of nonlinear branches; the cheapest factor wins. */
const LATE_PENALTIES = [0, 1, 2, 4, 8];
/** A late column is eliminated about this many times for each time an early one is. */
const LATE_WEIGHT_COUNT = 5;

/** Symbolic elimination of the graph `pairs` on nodeCount nodes; nodes in `late` touch branches that change within a solve. */
export function starMeshPattern(
  nodeCount: number,
  pairs: readonly (readonly [number, number])[],
  late: ReadonlySet<number>,
): StarMeshPattern {
  let best: SplitOrder | undefined;
  for (const penalty of LATE_PENALTIES) {
    const found = splitOrder(eliminationOrder(nodeCount, pairs, late, penalty), late);
    if (best === undefined || found.cost < best.cost) best = found;
  }
  return layOut(nodeCount, best!.columns, best!.splitColumn);
}

interface SplitOrder {
  readonly columns: readonly EliminatedNode[];
  readonly splitColumn: number;
  readonly cost: number;
}

/** Moves the columns no late column feeds into to the front: the same elimination tree, hence the same fill. */
function splitOrder(order: readonly EliminatedNode[], late: ReadonlySet<number>): SplitOrder {
  const rank = new Map(order.map((column, k) => [column.node, k]));
  const changing = order.map((column) => late.has(column.node));
  order.forEach((column, k) => {
    if (!changing[k]) return;
    const parent = Math.min(...column.neighbours.map((node) => rank.get(node)!));
    if (Number.isFinite(parent)) changing[parent] = true;
  });
  const early = order.filter((_, k) => !changing[k]);
  const last = order.filter((_, k) => changing[k]);
  const cost = operations(early) + LATE_WEIGHT_COUNT * operations(last);
  return { columns: [...early, ...last], splitColumn: early.length, cost };
}

function operations(columns: readonly EliminatedNode[]): number {
  let sum = 0;
  for (const { neighbours } of columns) {
    sum += 4 + 4 * neighbours.length + (neighbours.length * (neighbours.length + 1)) / 2;
  }
  return sum;
}

function layOut(
  nodeCount: number,
  columns: readonly EliminatedNode[],
  splitColumn: number,
): StarMeshPattern {
  const n = columns.length;
  const positionOfNode = new Int32Array(nodeCount).fill(n);
  const nodeAtPosition = new Int32Array(n + 1);
  columns.forEach(({ node }, k) => {
    positionOfNode[node] = k;
    nodeAtPosition[k] = node;
  });
  const columnStart = new Int32Array(n + 1);
  const rows: number[] = [];
  const entries = new Map<number, number>();
  columns.forEach(({ neighbours }, j) => {
    const sorted = neighbours.map((node) => positionOfNode[node]!).sort((one, two) => one - two);
    for (const row of [...sorted, n]) {
      entries.set(j * (n + 1) + row, rows.length);
      rows.push(row);
    }
    columnStart[j + 1] = rows.length;
  });
  const entryIndex = (one: number, other: number): number | undefined =>
    entries.get(Math.min(one, other) * (n + 1) + Math.max(one, other));
  const rowIndex = Int32Array.from(rows);
  const { updateStart, updateTarget } = updates(columnStart, rowIndex, entryIndex);
  return {
    unknownCount: n,
    positionOfNode,
    nodeAtPosition,
    columnStart,
    rowIndex,
    updateStart,
    updateTarget,
    splitColumn,
    entryIndex,
  };
}

function updates(
  columnStart: Int32Array,
  rowIndex: Int32Array,
  entryIndex: (one: number, other: number) => number | undefined,
): { updateStart: Int32Array; updateTarget: Int32Array } {
  const updateStart = new Int32Array(columnStart.length);
  const targets: number[] = [];
  for (let j = 0; j + 1 < columnStart.length; j++) {
    for (let p = columnStart[j]!; p < columnStart[j + 1]!; p++) {
      for (let q = p + 1; q < columnStart[j + 1]!; q++) {
        targets.push(entryIndex(rowIndex[p]!, rowIndex[q]!)!);
      }
    }
    updateStart[j + 1] = targets.length;
  }
  return { updateStart, updateTarget: Int32Array.from(targets) };
}
