import fc from "fast-check";
import { expect, it } from "vitest";
import type { Ladder, LadderItem, LadderSegment, LadderWords } from "./ladder.ts";
import { layoutDiagram } from "./layoutDiagram.ts";

const item = (id: string, isElastic = true): LadderItem => ({
  id,
  ref: 0,
  isElastic,
  isLow: false,
  boxes: [{ heightMm: 10, leftMm: 2, rightMm: 8 }],
});

const words: LadderWords = {
  to: (what) => item(`to ${what}`, false),
  from: (what) => item(`from ${what}`, false),
};

const node = (id: string) => ({
  id,
  isLow: false,
  toldMm: 5,
  label: { heightMm: 4, leftMm: 4, rightMm: 1 },
});

const room = { widthMm: 2000, heightMm: 400, footPitchMm: 8 };

/** Any network that runs down: each segment from an earlier node, or the top, to a later one, or to a foot. */
const ladders = fc
  .array(fc.tuple(fc.nat(5), fc.nat(5), fc.integer({ min: 1, max: 3 })), {
    minLength: 1,
    maxLength: 14,
  })
  .map((drawn): Ladder => {
    const segments = drawn.map(([a, b, count], i): LadderSegment => {
      const from = a === 0 ? null : `N${a}`;
      const to = b > a ? `N${b}` : null;
      const items = Array.from({ length: count }, (_, k) => item(`S${i}.${k}`));
      return { id: `S${i}`, from, to, items, rank: i };
    });
    const ids = new Set(segments.flatMap(({ from, to }) => [from, to].filter((id) => id !== null)));
    return { nodes: [...ids].sort().map(node), segments };
  })
  .filter(({ nodes, segments }) =>
    nodes.every(({ id }) => segments.some(({ from, to }) => from === id || to === id)),
  );

/** A bus that runs across the line of a column that does not meet it. */
function crossings({ nodes, segments }: ReturnType<typeof layoutDiagram>): number {
  return nodes.reduce((count, { yMm, meetsXMm }) => {
    const [first, last] = [meetsXMm[0]!, meetsXMm.at(-1)!];
    const crossed = segments.filter(
      ({ xMm, topMm, bottomMm }) =>
        xMm > first && xMm < last && topMm < yMm - 1e-6 && bottomMm > yMm + 1e-6,
    );
    return count + crossed.length;
  }, 0);
}

it("draws every item of any network once, in order down its column, and crosses nothing", () => {
  fc.assert(
    fc.property(ladders, (ladder) => {
      const laid = layoutDiagram(ladder, room, {}, words);
      const drawn = laid.segments.flatMap(({ segment }) => segment.items.map(({ id }) => id));
      const wanted = ladder.segments.flatMap(({ items }) => items.map(({ id }) => id));
      const isWords = (id: string): boolean => /^(to|from) /.test(id);
      expect(drawn.filter((id) => !isWords(id)).sort()).toEqual(wanted.sort());
      for (const { items } of laid.segments) {
        for (const [i, { topMm }] of items.entries()) {
          if (i > 0) expect(topMm).toBeGreaterThanOrEqual(items[i - 1]!.bottomMm - 1e-6);
        }
      }
      expect(crossings(laid)).toBe(0);
      expect(layoutDiagram(ladder, room, {}, words)).toEqual(laid);
    }),
    { numRuns: 150 },
  );
});

it("keeps columns apart at every level", () => {
  const segments = ["a", "b", "c"].map(
    (id, i): LadderSegment => ({ id, from: "N", to: null, items: [item(id)], rank: i }),
  );
  const { columnXsMm } = layoutDiagram({ nodes: [node("N")], segments }, room, {}, words);
  for (const [i, xMm] of columnXsMm.entries()) {
    if (i > 0) expect(xMm - columnXsMm[i - 1]!).toBeGreaterThanOrEqual(2 + 8);
  }
});

it("folds a path longer than the paper and tells where it goes on", () => {
  const items = Array.from({ length: 12 }, (_, i) => item(`W${i}`));
  const ladder = { nodes: [], segments: [{ id: "a", from: null, to: null, items, rank: 0 }] };
  const laid = layoutDiagram(ladder, { ...room, heightMm: 70 }, {}, words);
  expect(laid.fits).toBe(true);
  expect(laid.folds.length).toBeGreaterThan(0);
  const lowest = laid.segments.flatMap((one) => one.items.map(({ bottomMm }) => bottomMm));
  expect(Math.max(...lowest)).toBeLessThanOrEqual(70 + 1e-6);
});

it("says when a single item is taller than the paper", () => {
  const ladder = {
    nodes: [],
    segments: [{ id: "a", from: null, to: null, items: [item("W")], rank: 0 }],
  };
  expect(layoutDiagram(ladder, { ...room, heightMm: 5 }, {}, words).fits).toBe(false);
});
