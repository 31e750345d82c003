import { edgesByVertex, type GraphEdge, otherEnd } from "./graphEdge.ts";
import type { Point } from "./segments.ts";

/** An edge of a tree seen from its root: from the nearer vertex to the farther. */
export interface Limb {
  readonly edge: string;
  readonly from: string;
  readonly to: string;
  readonly length: number | null;
}

/**
 * The limbs of the tree that holds the root, each after the limb that leads to it; side by side in order of edge id.
 *
 * @returns null where the edges reached from the root make a loop: then it is no tree.
 */
export function limbsFrom(edges: readonly GraphEdge[], root: string): readonly Limb[] | null {
  const around = edgesByVertex(edges);
  const limbs: Limb[] = [];
  const met = new Set([root]);
  const used = new Set<string>();
  for (const vertex of met) {
    for (const edge of around.get(vertex) ?? []) {
      if (used.has(edge.id)) continue;
      used.add(edge.id);
      const to = otherEnd(edge, vertex);
      if (met.has(to)) return null;
      met.add(to);
      limbs.push({ edge: edge.id, from: vertex, to, length: edge.length });
    }
  }
  return limbs;
}

/** Edges from the root of a tree to a vertex of it, in order; null where the vertex is not in the tree. */
export function pathInTree(limbs: readonly Limb[], to: string): readonly string[] | null {
  const into = new Map(limbs.map((limb) => [limb.to, limb]));
  const isRoot = !into.has(to) && limbs.some((limb) => limb.from === to);
  if (!into.has(to)) return isRoot ? [] : null;
  const path: string[] = [];
  for (let limb = into.get(to); limb !== undefined; limb = into.get(limb.from)) {
    path.unshift(limb.edge);
  }
  return path;
}

/**
 * Lays a tree flat with every limb straight and at its true length.
 *
 * @param limbs      from `limbsFrom`.
 * @param directions angle of each limb by edge id, radians from the x axis.
 * @param origin     where the root goes.
 * @returns places by vertex; a limb without length or direction, and all beyond it, are absent.
 */
export function unrollTree(
  limbs: readonly Limb[],
  directions: ReadonlyMap<string, number>,
  origin: Point,
): ReadonlyMap<string, Point> {
  const places = new Map<string, Point>();
  const root = limbs[0]?.from;
  if (root === undefined) return places;
  places.set(root, origin);
  for (const { edge, from, to, length } of limbs) {
    const start = places.get(from);
    const angle = directions.get(edge);
    if (start === undefined || angle === undefined || length === null) continue;
    places.set(to, {
      x: start.x + length * Math.cos(angle),
      y: start.y + length * Math.sin(angle),
    });
  }
  return places;
}
