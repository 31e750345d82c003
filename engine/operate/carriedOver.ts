import type { Network } from "../network/index.ts";
import { type Resisted, resistedAnew } from "./resistedAnew.ts";

/** What the way of the relays of a solved state depended on. */
export interface RelayTrail {
  readonly network: Network;
  /** By element: largest |current| in any network on the way, A. */
  readonly mostA: Float64Array;
  /** By how much the volts of any coil on the way missed where it would have gone another way, V; −Infinity: not known, and nothing may be taken over. */
  readonly leastMarginV: number;
}

/** A state solved before. */
export interface Ended {
  /** What it solves. */
  readonly network: Network;
  readonly elementA: Float64Array;
  /** How its relays came to rest; of the last solve from the start, where it was solved from where it had ended. */
  readonly trail: RelayTrail;
}

/** "stands": the solution is that of the network now; "rests": its relays rest where they did; "unknown": it must be solved in full. */
export type Carried = "stands" | "rests" | "unknown";

/** Where no volts move by more than this a solution stands as it is, V. */
const STANDS_V = 1e-9;

/**
 * What is known of states solved before where resistances have changed since and nothing else: no volts of a state move by more than
 *
 *   Σ |R' − R| · |i|   over the elements changed, i the current before
 *
 * (a change of resistance is a source of (R' − R) · i in series with it, and in a network of laws that rise no volts exceed those of
 * its sources: Duffin 1947 and the no-gain property after it, *memory*). So a state in which nothing flows through what changed
 * stands as it was; and where no coil could come to another answer on the way, the relays rest where they rested.
 */
export function carriedOver(network: Network): (was: Ended) => Carried {
  const changes = new Map<Network, readonly Resisted[] | null>();
  const changedSince = (was: Network): readonly Resisted[] | null => {
    const known = changes.get(was);
    if (known !== undefined) return known;
    const found = resistedAnew(was, network);
    changes.set(was, found);
    return found;
  };
  const movedV = (was: Network, currentA: Float64Array): number => {
    const changed = changedSince(was);
    if (changed === null) return Number.POSITIVE_INFINITY;
    let sumV = 0;
    for (const { k, byOhm } of changed) sumV += byOhm * Math.abs(currentA[k]!);
    return sumV;
  };
  return ({ network: solvedIn, elementA, trail }) => {
    const isOneWay = movedV(trail.network, trail.mostA) < trail.leastMarginV;
    if (!isOneWay) return "unknown";
    return movedV(solvedIn, elementA) <= STANDS_V ? "stands" : "rests";
  };
}
