import type { ElementDraft } from "./jobElement.ts";

/** Which elements current of one kind may pass in a search over the loom. */
export type Passes = (element: ElementDraft) => boolean;

/** Wires, fly leads, joints, cavities and fuses: what only carries. */
export const carries: Passes = ({ kind }) => kind === "wire" || kind === "joint" || kind === "fuse";

/** Node → nodes one element away, over the elements that pass; neighbours in order of the elements. */
export function neighbourhood(
  elements: readonly ElementDraft[],
  passes: Passes,
): ReadonlyMap<string, readonly string[]> {
  const near = new Map<string, string[]>();
  const add = (from: string, to: string): void => {
    const list = near.get(from);
    if (list === undefined) near.set(from, [to]);
    else list.push(to);
  };
  for (const element of elements) {
    if (!passes(element)) continue;
    add(element.from, element.to);
    add(element.to, element.from);
  }
  return near;
}

/**
 * Everything reached from some nodes without entering `barred`, each with the node it was reached from (null for the starts);
 * breadth first, so that the way back is a shortest one.
 */
export function reachFrom(
  starts: Iterable<string>,
  near: ReadonlyMap<string, readonly string[]>,
  barred: ReadonlySet<string> = new Set(),
): ReadonlyMap<string, string | null> {
  const cameFrom = new Map<string, string | null>();
  for (const start of starts) if (!barred.has(start)) cameFrom.set(start, null);
  // A Map is walked in order of insertion, additions included: the walk is the queue.
  for (const node of cameFrom.keys()) {
    for (const next of near.get(node) ?? []) {
      if (!cameFrom.has(next) && !barred.has(next)) cameFrom.set(next, node);
    }
  }
  return cameFrom;
}

/** The way from a start to a node found by `reachFrom`, start first. */
export function wayTo(
  cameFrom: ReadonlyMap<string, string | null>,
  node: string,
): readonly string[] {
  const way: string[] = [];
  for (let at: string | null | undefined = node; at != null; at = cameFrom.get(at)) way.unshift(at);
  return way;
}
