import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { eliminationOrder } from "./eliminationOrder.ts";
import { starMeshPattern } from "./starMeshPattern.ts";

const tree = fc
  .array(fc.double({ min: 0, max: 0.999, noNaN: true }), { minLength: 1, maxLength: 60 })
  .map((choices) => choices.map((x, k): [number, number] => [k + 1, Math.floor(x * (k + 1))]));

describe("eliminationOrder", () => {
  it("leaves a tree a tree: no entry that was not a branch", () => {
    fc.assert(
      fc.property(tree, (pairs) => {
        const order = eliminationOrder(pairs.length + 1, pairs, new Set(), 0);
        const between = pairs.filter(([, b]) => b !== 0).length;
        expect(order.reduce((sum, { neighbours }) => sum + neighbours.length, 0)).toBe(between);
      }),
    );
  });

  it("takes a ring of 64 apart by every second node: its height is near the logarithm, not the length", () => {
    const pairs = Array.from({ length: 64 }, (_, k): [number, number] => [
      k + 1,
      ((k + 1) % 64) + 1,
    ]);
    const order = eliminationOrder(65, pairs, new Set(), 0);
    const height = new Map<number, number>();
    for (const { node, neighbours } of order) {
      const own = height.get(node) ?? 0;
      for (const other of neighbours) height.set(other, Math.max(height.get(other) ?? 0, own + 1));
    }
    expect(Math.max(...height.values())).toBeLessThanOrEqual(10);
  });
});

describe("starMeshPattern", () => {
  it("puts every node of a nonlinear branch behind the split, and nothing late in front of it", () => {
    fc.assert(
      fc.property(tree, fc.integer({ min: 0, max: 1e6 }), (pairs, salt) => {
        const late = new Set(pairs.flatMap(([a]) => ((a * 7919 + salt) % 5 === 0 ? [a] : [])));
        const pattern = starMeshPattern(pairs.length + 1, pairs, late);
        for (const node of late) {
          expect(pattern.positionOfNode[node]).toBeGreaterThanOrEqual(pattern.splitColumn);
        }
        for (let j = 0; j < pattern.unknownCount; j++) {
          const rows = pattern.rowIndex.slice(pattern.columnStart[j], pattern.columnStart[j + 1]);
          expect(rows.at(-1)).toBe(pattern.unknownCount);
          expect([...rows]).toEqual([...rows].sort((one, other) => one - other));
          if (j >= pattern.splitColumn) expect(rows[0]).toBeGreaterThan(j);
        }
      }),
    );
  });
});
