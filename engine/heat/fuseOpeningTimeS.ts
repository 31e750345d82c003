/** One gate of a fuse's published time-current band. */
export interface FusePoint {
  /** Current, % of rating. */
  readonly loadPercent: number;
  /** Shortest time it may open in, s; "never": it must carry this for good; null: nothing stated here. */
  readonly minS: number | "never" | null;
  /** Longest time it may take, s; null: nothing stated here. */
  readonly maxS: number | null;
}

/**
 * How to read between the gates. `interpolated`: straight lines on logarithmic paper, and constant I²t beyond the last
 * gate: the usual reading, which no standard promises. `staircase`: only what the gates and "more current, less time"
 * prove: the longest time of the gate below, the shortest time of the gate above.
 */
export type FuseReading = "interpolated" | "staircase";

export interface FuseBand {
  /** Gates in rising order of current. */
  readonly points: readonly FusePoint[];
  readonly reading: FuseReading;
}

export interface OpeningTime {
  /** Shortest, s. Null: not known to open at all at this current. 0: it may open, and no shortest time is stated. */
  readonly minS: number | null;
  /** Longest, s. Null: never guaranteed to open. */
  readonly maxS: number | null;
}

export interface FuseGate {
  readonly loadPercent: number;
  readonly timeS: number;
}

/**
 * Shortest and longest opening time of a fuse at a constant current.
 *
 * Both fall (or stay) as the current rises. Below the first gate that states a longest time, opening is never
 * guaranteed; below the first that states a shortest time, and at or below a "never" gate, it is not expected.
 *
 * @param fuse.points    gates from the caller's table, in % of rating.
 * @param fuse.ratingA   rating, A, > 0; the sum, for fuses side by side.
 * @param fuse.currentA  A, ≥ 0.
 */
export function fuseOpeningTimeS(
  fuse: FuseBand & { readonly ratingA: number; readonly currentA: number },
): OpeningTime {
  assertBand(fuse.points);
  const loadPercent = (100 * fuse.currentA) / fuse.ratingA;
  return {
    minS: shortestS(fuse, loadPercent),
    maxS: longestOpeningS(fuse, loadPercent),
  };
}

/** Gates that state a longest time, in rising order of current. */
export function longestGates(points: readonly FusePoint[]): readonly FuseGate[] {
  return points.flatMap(({ loadPercent, maxS }) =>
    maxS === null ? [] : [{ loadPercent, timeS: maxS }],
  );
}

/** Longest opening time at a current in % of rating, s; null where opening is not guaranteed. */
export const longestOpeningS = (band: FuseBand, loadPercent: number): number | null =>
  longestOpening(band)(loadPercent);

/** The same for many currents: the gates are looked out once. */
export function longestOpening({
  points,
  reading,
}: FuseBand): (loadPercent: number) => number | null {
  const gates = longestGates(points);
  return (loadPercent) => {
    let index = gates.length - 1;
    while (index >= 0 && gates[index]!.loadPercent > loadPercent) index--;
    const below = gates[index];
    if (below === undefined) return null;
    if (reading === "staircase") return below.timeS;
    return onLogPaper(below, gates[index + 1], loadPercent);
  };
}

function shortestS({ points, reading }: FuseBand, loadPercent: number): number | null {
  const stated = points.filter((point) => point.minS !== null);
  const first = stated[0];
  if (first === undefined) return 0;
  if (loadPercent < first.loadPercent) return null;
  const never = stated.filter((point) => point.minS === "never").at(-1);
  if (never !== undefined && loadPercent <= never.loadPercent) return null;
  const gates = stated.flatMap(({ loadPercent: at, minS }) =>
    typeof minS === "number" ? [{ loadPercent: at, timeS: minS }] : [],
  );
  const below = gates.filter((gate) => gate.loadPercent <= loadPercent).at(-1);
  const above = gates.find((gate) => gate.loadPercent >= loadPercent);
  if (reading === "staircase" || below === undefined) return above?.timeS ?? 0;
  // The band goes on without a shortest time: none is promised there.
  if (above === undefined && points.at(-1)?.loadPercent !== below.loadPercent) return 0;
  return onLogPaper(below, above === below ? undefined : above, loadPercent);
}

/** On a straight line through two gates on log-log paper; beyond the last one, I²t stays the same. */
function onLogPaper(below: FuseGate, above: FuseGate | undefined, loadPercent: number): number {
  const over = Math.log(loadPercent / below.loadPercent);
  if (above === undefined) return below.timeS * Math.exp(-2 * over);
  const exponent =
    Math.log(above.timeS / below.timeS) / Math.log(above.loadPercent / below.loadPercent);
  return below.timeS * Math.exp(exponent * over);
}

function assertBand(points: readonly FusePoint[]): void {
  let lastPercent = 0;
  let lastMinS = Number.POSITIVE_INFINITY;
  let lastMaxS = Number.POSITIVE_INFINITY;
  for (const { loadPercent, minS, maxS } of points) {
    const shortS = minS === "never" ? Number.POSITIVE_INFINITY : (minS ?? lastMinS);
    const longS = maxS ?? lastMaxS;
    if (!(loadPercent > lastPercent && shortS <= lastMinS && longS <= lastMaxS)) {
      throw new Error(`fuse band: gates out of order at ${loadPercent} %`);
    }
    if (typeof minS === "number" && maxS !== null && minS > maxS) {
      throw new Error(`fuse band: shortest time over longest at ${loadPercent} %`);
    }
    if (maxS !== null && !(maxS > 0)) throw new Error(`fuse band: no time at ${loadPercent} %`);
    [lastPercent, lastMinS, lastMaxS] = [loadPercent, shortS, longS];
  }
}
