import type { Law, Network } from "../network/index.ts";

/** True where two networks join the same nodes by the same laws: no solve can tell them apart. */
export function isOneNetwork(one: Network, other: Network): boolean {
  return (
    one.nodeCount === other.nodeCount &&
    one.leakOhm === other.leakOhm &&
    one.branches.length === other.branches.length &&
    one.branches.every(({ a, b, law }, k) => {
      const same = other.branches[k]!;
      return a === same.a && b === same.b && isOneLaw(law, same.law);
    })
  );
}

function isOneLaw(one: Law, other: Law): boolean {
  if (one.kind === "ohm" && other.kind === "ohm") return one.ohm === other.ohm;
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
