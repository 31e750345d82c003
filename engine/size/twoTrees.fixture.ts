import type { SizeProblem } from "./sizeProblem.ts";

/** A generator of repeatable numbers in [0, 1) for test problems (mulberry32). */
export function repeatable(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = Math.imul(state ^ (state >>> 15), 1 | state);
    t = (t + Math.imul(t ^ (t >>> 7), 61 | t)) ^ t;
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const areasMm2 = [0.5, 0.75, 1, 1.5, 2, 2.5, 3, 4, 4.5, 6, 10, 16];

/**
 * A loom like those of machines: loads fed over a tree of wires and earthed over another, shared or private.
 * Currents are those of the loads beyond each wire, so they add up along the trees.
 */
export function twoTrees(shape: {
  readonly seed: number;
  readonly loadCount: number;
  readonly feedCount: number;
  /** Wires of the earth tree that several loads share; 0: every load has its own earth wire. */
  readonly returnCount: number;
}): SizeProblem {
  const next = repeatable(shape.seed);
  const loadsA = Array.from({ length: shape.loadCount }, () => 0.2 + 5 * next() ** 2);
  const feed = tree(next, "F", shape.feedCount, shape.loadCount);
  const back = tree(next, "R", shape.returnCount, shape.loadCount);
  const ways = loadsA.map((_, load) => [
    ...feed[load]!,
    `f${load}`,
    `r${load}`,
    ...(back[load] ?? []),
  ]);
  const currentOf = new Map<string, number>();
  for (const [load, way] of ways.entries()) {
    for (const wire of way) currentOf.set(wire, (currentOf.get(wire) ?? 0) + loadsA[load]!);
  }
  const wires = new Map(
    [...currentOf].map(([wire, currentA]) => {
      const lengthM = 0.1 + 1.4 * next();
      const fit = areasMm2.filter((areaMm2) => areaMm2 * 8 >= currentA);
      const options = (fit.length > 0 ? fit : [16]).map((areaMm2) => ({
        cost: areaMm2 * lengthM,
        dropV: (0.0186 * lengthM * currentA) / areaMm2,
      }));
      return [wire, options] as const;
    }),
  );
  const budgets = ways.map((way, load) => ({
    id: `L${load}`,
    wires: way,
    budgetV: next() < 0.5 ? 0.3 : 0.5,
  }));
  return { wires, budgets };
}

/** For every load the wires from the root to the node of a random tree it hangs on. */
function tree(
  next: () => number,
  name: string,
  wireCount: number,
  loadCount: number,
): readonly (readonly string[])[] {
  const ways: string[][] = [[]];
  for (let i = 1; i <= wireCount; i++) {
    const parent = Math.floor(next() * i);
    ways.push([...ways[parent]!, `${name}${i}`]);
  }
  return Array.from({ length: loadCount }, () => ways[Math.floor(next() * ways.length)]!);
}
