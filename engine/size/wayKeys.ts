import type { DesignNetwork } from "./designNetwork.ts";
import { heaviest, type Touching } from "./loadWay.ts";

/** Tells ways apart without laying them out: see `wayKeys`. */
export interface WayKeys {
  /** Turns to another solved state, A by element. */
  readonly turnTo: (elementA: Float64Array) => void;
  /** The conductors of a load's way in the state turned to, as one number; null where `loadWay` finds none. */
  readonly indexOf: (load: number) => number | null;
}

const NOT_YET = -2;
const NO_WAY = -1;
/** The way that ends at the battery. */
const HOME = 0;
/** No load is left out of the search for the next element: its current leaves where its way in begins. */
const ANY = -1;
/** More ways than this cannot be told apart by one whole number of a double. */
const MOST_WAYS = 2 ** 26;

/**
 * Numbers for the ways of `loadWay`: two ways have one number exactly when they pass the same conductors in the same order.
 * A way is its first conductor and the number of the rest, and the rest is found once a state for all loads beyond it.
 */
export function wayKeys(network: DesignNetwork, touching: Touching): WayKeys {
  const { elements, batteryAt, loadAt, conductorAt } = network;
  const numberOf = new Map<number, number>();
  const numbered = (firstIndex: number, restIndex: number): number => {
    const pair = restIndex * elements.length + firstIndex;
    const known = numberOf.get(pair) ?? numberOf.size + 1;
    if (known >= MOST_WAYS) throw new Error("too many ways to tell apart");
    numberOf.set(pair, known);
    return known;
  };
  const into = new Int32Array(touching.length);
  const outOf = new Int32Array(touching.length);
  let elementA: Float64Array = new Float64Array(0);
  const follow = (start: number, direction: 1 | -1): number => {
    const known = direction === 1 ? outOf : into;
    const passed: number[] = [];
    const nodes: number[] = [];
    let node = start;
    let number = NOT_YET;
    while (number === NOT_YET) {
      number = known[node]!;
      if (number !== NOT_YET) break;
      // A way that comes round to where it has been leads nowhere.
      known[node] = NO_WAY;
      nodes.push(node);
      const next = heaviest(network, touching, { elementA, load: ANY }, { node, direction });
      if (next === null || loadAt.has(next)) number = NO_WAY;
      else if (batteryAt.has(next)) number = HOME;
      else {
        passed.push(next);
        const ends = elements[next]!.nodes;
        node = ends[0] === node ? ends[1] : ends[0];
      }
    }
    for (let i = nodes.length - 1; i >= 0; i--) {
      const by = passed[i];
      if (by !== undefined && number !== NO_WAY && conductorAt.has(by))
        number = numbered(by, number);
      known[nodes[i]!] = number;
    }
    return number;
  };
  return {
    turnTo: (solved) => {
      elementA = solved;
      into.fill(NOT_YET);
      outOf.fill(NOT_YET);
    },
    indexOf: (load) => {
      const [a, b] = elements[load]!.nodes;
      const isForward = elementA[load]! > 0;
      const feed = follow(isForward ? a : b, -1);
      if (feed === NO_WAY) return null;
      const back = follow(isForward ? b : a, 1);
      return back === NO_WAY ? null : feed * MOST_WAYS + back;
    },
  };
}
