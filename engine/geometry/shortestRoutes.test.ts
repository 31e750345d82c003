import fc from "fast-check";
import { expect, test } from "vitest";
import {
  bridgeEdges,
  type GraphEdge,
  limbsFrom,
  pathInTree,
  shortestRoutes,
  unrollTree,
} from "./index.ts";

/** "ab=3" is an edge of that name between a and b; "ab=?" has no known length. */
const graph = (...words: readonly string[]): readonly GraphEdge[] =>
  words.map((word) => {
    const [id = "", length = ""] = word.split("=");
    return { id, a: id[0]!, b: id[1]!, length: length === "?" ? null : Number(length) };
  });

test("the shorter way round a loop", () => {
  const routes = shortestRoutes(graph("ab=3", "bc=4", "ac=9", "cd=1"), "a");
  expect(routes.get("d")).toEqual({
    kind: "found",
    length: 8,
    vertices: ["a", "b", "c", "d"],
    edges: ["ab", "bc", "cd"],
    isTied: false,
    isOnly: false,
    mayBeShorter: false,
  });
  expect(routes.get("a")).toMatchObject({ kind: "found", length: 0, edges: [], isOnly: true });
});

test("two ways of the same length are said to tie; fewer edges win, then earlier names", () => {
  const routes = shortestRoutes(graph("ab=3", "bd=3", "ac=3", "cd=3", "de=1"), "a");
  expect(routes.get("d")).toMatchObject({ edges: ["ab", "bd"], isTied: true });
  expect(routes.get("e")).toMatchObject({ edges: ["ab", "bd", "de"], isTied: true });
  expect(routes.get("b")).toMatchObject({ isTied: false });
  const direct = shortestRoutes(graph("ab=3", "bd=3", "ad=6"), "a");
  expect(direct.get("d")).toMatchObject({ edges: ["ad"], isTied: true });
});

test("in a tree every route is the only one", () => {
  const routes = shortestRoutes(graph("ab=1", "bc=2", "bd=3"), "c");
  expect(routes.get("d")).toMatchObject({ length: 5, isOnly: true, isTied: false });
});

test("an unknown length is never taken for nil", () => {
  const routes = shortestRoutes(graph("ab=1", "bc=?", "cd=2"), "a");
  expect(routes.get("b")).toMatchObject({ kind: "found", length: 1 });
  expect(routes.get("c")).toEqual({ kind: "unknown", unknownEdges: ["bc"] });
  expect(routes.get("d")).toEqual({ kind: "unknown", unknownEdges: ["bc"] });
});

test("a known way is taken, and said to be perhaps not the shortest", () => {
  const routes = shortestRoutes(graph("ab=5", "bc=5", "ac=?"), "a");
  expect(routes.get("c")).toMatchObject({ length: 10, edges: ["ab", "bc"], mayBeShorter: true });
  expect(routes.get("b")).toMatchObject({ length: 5, mayBeShorter: false });
});

test("what is not joined has no route; a length below nil is a bug of the caller", () => {
  expect(shortestRoutes(graph("ab=1", "cd=1"), "a").has("c")).toBe(false);
  expect(shortestRoutes(graph("ab=1"), "z").get("z")).toMatchObject({ length: 0 });
  expect(() => shortestRoutes(graph("ab=-1"), "a")).toThrow(/length/);
});

const names = "abcdefgh";
const anyGraph = fc
  .array(fc.tuple(fc.nat(7), fc.nat(7), fc.integer({ min: 0, max: 9 })), { maxLength: 16 })
  .map((list) =>
    list.map(([i, j, length], k) => ({ id: `e${k}`, a: names[i]!, b: names[j]!, length })),
  );

test("lengths agree with every pair relaxed through every middle", () => {
  fc.assert(
    fc.property(anyGraph, (edges) => {
      const far = new Map<string, number>();
      const key = (p: string, q: string): string => p + q;
      const at = (p: string, q: string): number => far.get(key(p, q)) ?? Number.POSITIVE_INFINITY;
      for (const p of names) far.set(key(p, p), 0);
      for (const { a, b, length } of edges) {
        far.set(key(a, b), Math.min(at(a, b), length));
        far.set(key(b, a), Math.min(at(b, a), length));
      }
      for (const m of names)
        for (const p of names)
          for (const q of names) far.set(key(p, q), Math.min(at(p, q), at(p, m) + at(m, q)));
      const routes = shortestRoutes(edges, "a");
      for (const q of names) {
        const route = routes.get(q);
        const length = route?.kind === "found" ? route.length : Number.POSITIVE_INFINITY;
        expect(length).toBe(at("a", q));
        if (route?.kind !== "found") continue;
        const sum = route.edges.reduce((s, id) => s + edges.find((e) => e.id === id)!.length, 0);
        expect(sum).toBe(length);
      }
    }),
  );
});

test("a bridge is an edge whose loss parts its ends", () => {
  fc.assert(
    fc.property(anyGraph, (edges) => {
      const bridges = bridgeEdges(edges);
      for (const edge of edges) {
        const rest = edges.filter(({ id }) => id !== edge.id);
        const isParted = edge.a !== edge.b && !shortestRoutes(rest, edge.a).has(edge.b);
        expect(bridges.has(edge.id)).toBe(isParted);
      }
    }),
  );
});

test("a tree from its root, the path in it, and laid flat at true length", () => {
  const edges = graph("ab=3", "bc=4", "bd=5");
  const limbs = limbsFrom(edges, "a")!;
  expect(limbs.map(({ from, to }) => from + to)).toEqual(["ab", "bc", "bd"]);
  expect(pathInTree(limbs, "d")).toEqual(["ab", "bd"]);
  expect(pathInTree(limbs, "a")).toEqual([]);
  expect(pathInTree(limbs, "z")).toBeNull();
  const directions = new Map([
    ["ab", 0],
    ["bc", Math.PI / 2],
  ]);
  const places = unrollTree(limbs, directions, { x: 1, y: 1 });
  expect(places.get("b")).toEqual({ x: 4, y: 1 });
  expect(places.get("c")!.x).toBeCloseTo(4, 12);
  expect(places.get("c")!.y).toBeCloseTo(5, 12);
  expect(places.has("d")).toBe(false);
  expect(limbsFrom(graph("ab=1", "bc=1", "ca=1"), "a")).toBeNull();
});
