import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { blockCutTree } from "./blockCutTree.ts";
import { type CutEdge, minimumCut } from "./minimumCut.ts";

const both = (from: number, to: number, capacity: number): CutEdge => ({
  from,
  to,
  forward: capacity,
  backward: capacity,
});

describe("minimum cut", () => {
  test("two in series: the smaller one", () => {
    const cut = minimumCut([both(0, 1, 40), both(1, 2, 7.5)], 3, 0, 2);
    expect(cut).toMatchObject({ total: 7.5, edges: [1], pathCount: 1 });
  });

  test("two in parallel: both, their sum", () => {
    const cut = minimumCut([both(0, 1, 10), both(0, 1, 15)], 2, 0, 1);
    expect(cut.total).toBe(25);
    expect([...cut.edges].sort()).toEqual([0, 1]);
  });

  test("a way round that cannot be cut leaves nothing to cut", () => {
    expect(minimumCut([both(0, 1, 10), both(0, 1, Infinity)], 2, 0, 1)).toMatchObject({
      total: Infinity,
      edges: [],
    });
  });

  test("an edge that flows one way only is no path the other way", () => {
    const oneWay: CutEdge = { from: 1, to: 0, forward: Infinity, backward: 0 };
    expect(minimumCut([oneWay], 2, 0, 1)).toMatchObject({ total: 0, pathCount: 0 });
  });

  const anyGraph = fc.array(
    fc.tuple(fc.nat(5), fc.nat(5), fc.integer({ min: 1, max: 9 })).filter(([a, b]) => a !== b),
    { minLength: 1, maxLength: 10 },
  );

  test("law: no cheaper set of edges parts the two (every set tried)", () => {
    fc.assert(
      fc.property(anyGraph, (list) => {
        const edges = list.map(([a, b, capacity]) => both(a, b, capacity));
        const apart = (gone: number) => {
          const seen = new Set([0]);
          for (let changed = true; changed; ) {
            changed = false;
            edges.forEach(({ from, to }, i) => {
              if (gone & (1 << i) || seen.has(from) === seen.has(to)) return;
              seen.add(from).add(to);
              changed = true;
            });
          }
          return !seen.has(5);
        };
        let best = Infinity;
        for (let gone = 0; gone < 1 << edges.length; gone++) {
          const cost = edges.reduce((sum, e, i) => (gone & (1 << i) ? sum + e.forward : sum), 0);
          if (cost < best && apart(gone)) best = cost;
        }
        const cut = minimumCut(edges, 6, 0, 5);
        expect(cut.total).toBe(best);
        expect(apart(cut.edges.reduce((mask, i) => mask | (1 << i), 0))).toBe(true);
      }),
      { numRuns: 150 },
    );
  });
});

describe("block-cut tree", () => {
  test("a bridge is a block of its own; a ring is one block", () => {
    // 0-1 bridge, 1-2-3-1 ring, 3-4 bridge
    const graph = { nodeCount: 5, from: [0, 1, 2, 3, 3], to: [1, 2, 3, 1, 4] };
    const tree = blockCutTree(graph, 0);
    const ring = tree.blockOfEdge[1]!;
    expect([1, 2, 3].map((edge) => tree.blockOfEdge[edge])).toEqual([ring, ring, ring]);
    expect(new Set([tree.blockOfEdge[0], ring, tree.blockOfEdge[4]]).size).toBe(3);
    expect(tree.entryOfBlock[ring]).toBe(1);
    expect(tree.blockAboveNode[4]).toBe(tree.blockOfEdge[4]);
    expect(tree.entryOfBlock[tree.blockOfEdge[4]!]).toBe(3);
  });

  test("law: removing a block's entry parts its nodes from the root", () => {
    const anyEdges = fc.array(fc.tuple(fc.nat(7), fc.nat(7)), { minLength: 1, maxLength: 14 });
    fc.assert(
      fc.property(anyEdges, (list) => {
        const graph = { nodeCount: 8, from: list.map(([a]) => a), to: list.map(([, b]) => b) };
        const tree = blockCutTree(graph, 0);
        for (let node = 1; node < 8; node++) {
          const block = tree.blockAboveNode[node]!;
          if (block === -1) continue;
          const entry = tree.entryOfBlock[block]!;
          if (entry === 0) continue;
          const seen = new Set([0]);
          for (let round = 0; round < 8; round++) {
            for (const [a, b] of list) {
              if (a === entry || b === entry) continue;
              if (seen.has(a)) seen.add(b);
              else if (seen.has(b)) seen.add(a);
            }
          }
          expect(seen.has(node)).toBe(false);
        }
      }),
      { numRuns: 200 },
    );
  });
});
