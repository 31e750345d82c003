/** One way for something to be so: every switch named in one of its positions, and the flasher's contact where that matters. */
export interface Term {
  readonly positions: Readonly<Record<string, readonly string[]>>;
  readonly flash?: "on";
}

/** Ways, any of which will do. None: never. One without conditions: always. */
export type Terms = readonly Term[];

export const ALWAYS: Terms = [{ positions: {} }];

/** Both at once; null where one switch would have to stand in two positions. */
export function both(a: Term, b: Term): Term | null {
  const positions: Record<string, readonly string[]> = { ...a.positions };
  for (const [id, allowed] of Object.entries(b.positions)) {
    const now = positions[id];
    const left = now === undefined ? allowed : now.filter((one) => allowed.includes(one));
    if (left.length === 0) return null;
    positions[id] = left;
  }
  return { positions, ...(a.flash || b.flash ? { flash: "on" as const } : {}) };
}

export const allOf = (a: Terms, b: Terms): Terms =>
  a.flatMap((one) => b.flatMap((other) => both(one, other) ?? []));

/** Negated ways multiply: more than these are not told. */
const MOST_NEGATED_COUNT = 8;

/**
 * When none of the ways holds: ¬(a ∧ b ∨ c) = (¬a ∨ ¬b) ∧ ¬c, a switch not in some positions being one in the others.
 *
 * @returns null where a way hangs on the flasher, or there are too many
 */
export function noneOf(
  terms: Terms,
  allPositions: ReadonlyMap<string, readonly string[]>,
): Terms | null {
  const few = shortened(terms, allPositions);
  if (few.length > MOST_NEGATED_COUNT || few.some(({ flash }) => flash !== undefined)) return null;
  const without = (term: Term): Terms =>
    Object.entries(term.positions).flatMap(([id, allowed]) => {
      const others = (allPositions.get(id) ?? []).filter((one) => !allowed.includes(one));
      return others.length === 0 ? [] : [{ positions: { [id]: others } }];
    });
  return few.reduce((sofar, term) => shortened(allOf(sofar, without(term)), allPositions), ALWAYS);
}

/**
 * The same in as few words: what another way includes is left out, and ways that differ in one switch become one; a switch that may stand anywhere is not named.
 *
 * @param allPositions  every position of each switch
 */
export function shortened(
  terms: Terms,
  allPositions: ReadonlyMap<string, readonly string[]>,
): Terms {
  let now = terms.map((term) => withoutFree(term, allPositions));
  for (;;) {
    const kept = withoutIncluded(now);
    const merged = mergedOnce(kept, allPositions);
    if (merged === null) return kept.toSorted((a, b) => (keyOf(a) < keyOf(b) ? -1 : 1));
    now = merged;
  }
}

const keyOf = ({ positions, flash }: Term): string =>
  JSON.stringify([Object.entries(positions).sort(), flash ?? ""]);

function withoutFree(term: Term, allPositions: ReadonlyMap<string, readonly string[]>): Term {
  const named = Object.entries(term.positions)
    .filter(([id, allowed]) => allowed.length < (allPositions.get(id)?.length ?? 0))
    .sort(([a], [b]) => (a < b ? -1 : 1));
  return { ...term, positions: Object.fromEntries(named) };
}

/** Whether every state of `a` is one of `b`. */
function isWithin(a: Term, b: Term): boolean {
  if (b.flash !== undefined && a.flash === undefined) return false;
  return Object.entries(b.positions).every(
    ([id, allowed]) => a.positions[id]?.every((one) => allowed.includes(one)) ?? false,
  );
}

const withoutIncluded = (terms: readonly Term[]): readonly Term[] =>
  terms.filter((one, i) =>
    terms.every((other, k) => k === i || !isWithin(one, other) || (isWithin(other, one) && k > i)),
  );

function mergedOnce(
  terms: readonly Term[],
  allPositions: ReadonlyMap<string, readonly string[]>,
): Term[] | null {
  for (const [i, a] of terms.entries()) {
    for (const [k, b] of terms.entries()) {
      const merged = k > i ? merge(a, b, allPositions) : null;
      if (merged !== null) return [...terms.filter((one) => one !== a && one !== b), merged];
    }
  }
  return null;
}

function merge(
  a: Term,
  b: Term,
  allPositions: ReadonlyMap<string, readonly string[]>,
): Term | null {
  if (a.flash !== b.flash) return null;
  const ids = [...new Set([...Object.keys(a.positions), ...Object.keys(b.positions)])];
  const unlike = ids.filter(
    (id) => JSON.stringify(a.positions[id]) !== JSON.stringify(b.positions[id]),
  );
  const [only, ...more] = unlike;
  if (only === undefined || more.length > 0) return null;
  const [first, second] = [a.positions[only], b.positions[only]];
  if (first === undefined || second === undefined) return null;
  const all = allPositions.get(only) ?? [];
  const joined = all.filter((one) => first.includes(one) || second.includes(one));
  return withoutFree({ ...a, positions: { ...a.positions, [only]: joined } }, allPositions);
}
