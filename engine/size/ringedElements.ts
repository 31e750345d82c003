import { blockCutTree } from "../geometry/index.ts";
import type { JobElement } from "../operate/index.ts";

/**
 * Places of the copper elements that some other copper may share a current with: those on a loop of elements that `isCopper`, every
 * contact taken as closed. What is on no loop carries what its loads draw, whatever its own resistance.
 */
export function ringedElements(
  elements: readonly JobElement[],
  nodeCount: number,
  isCopper: (element: JobElement, k: number) => boolean,
): ReadonlySet<number> {
  const places: number[] = [];
  const from: number[] = [];
  const to: number[] = [];
  const rootOf = Int32Array.from({ length: nodeCount }, (_, node) => node);
  const root = (node: number): number => {
    let at = node;
    while (rootOf[at] !== at) {
      rootOf[at] = rootOf[rootOf[at]!]!;
      at = rootOf[at]!;
    }
    return at;
  };
  for (const [k, element] of elements.entries()) {
    if (!isCopper(element, k)) continue;
    const [a, b] = element.nodes;
    places.push(k);
    from.push(a);
    to.push(b);
    rootOf[root(a)] = root(b);
  }
  // One more node joined once to every island, so that one search reaches all of them and no loop is added.
  const hub = nodeCount;
  for (let node = 0; node < nodeCount; node++) {
    if (root(node) !== node) continue;
    from.push(hub);
    to.push(node);
  }
  const { blockOfEdge, blocks } = blockCutTree({ nodeCount: nodeCount + 1, from, to }, hub);
  return new Set(places.filter((_, i) => (blocks[blockOfEdge[i]!]?.length ?? 0) > 1));
}
