import type { Law, Network } from "../network/index.ts";

/** A branch that changed its resistance, and by how much, Ω. */
export interface Resisted {
  readonly k: number;
  readonly byOhm: number;
}

/** The branches in which two networks differ; null where they differ in more than resistances. */
export function resistedAnew(before: Network, after: Network): readonly Resisted[] | null {
  if (before === after) return [];
  if (before.nodeCount !== after.nodeCount || before.leakOhm !== after.leakOhm) return null;
  if (before.branches.length !== after.branches.length) return null;
  const found: Resisted[] = [];
  for (const [k, { a, b, law }] of after.branches.entries()) {
    const was = before.branches[k]!;
    if (was.a !== a || was.b !== b) return null;
    if (was.law.kind === "ohm" && law.kind === "ohm") {
      if (was.law.ohm !== law.ohm) found.push({ k, byOhm: Math.abs(law.ohm - was.law.ohm) });
    } else if (!isOneLaw(was.law, law)) return null;
  }
  return found;
}

/** True where two laws have every figure alike. */
function isOneLaw(one: Law, other: Law): boolean {
  const names = Object.keys(one) as (keyof Law)[];
  return (
    names.length === Object.keys(other).length &&
    names.every((name) => {
      const [value, same] = [one[name] as unknown, other[name] as unknown];
      if (!Array.isArray(value) || !Array.isArray(same)) return value === same;
      return JSON.stringify(value) === JSON.stringify(same);
    })
  );
}
