import { resizeWire } from "../../job/index.ts";
import type { Remedy } from "../../messages/index.ts";
import { wires as makes } from "../../tables/index.ts";
import type { Design } from "../judge.ts";

/** The smallest make of the same family as each wire's whose list reaches `currentA`; null where one wire has none. */
export function largerMake(
  { conductors }: Design,
  ids: readonly string[],
  currentA: number,
): Remedy | null {
  const loom = ids.filter((id) => conductors.get(id)!.kind === "wire");
  const chosen = loom.map((id) => makeFor(conductors.get(id)!.makeId, currentA));
  const first = chosen[0];
  if (first === undefined || chosen.some((make) => make === null) || first === null) return null;
  return {
    kind: "larger-wire",
    change: loom.map((id, i) => resizeWire({ wire: id, make: chosen[i]!.id })),
    cures: null,
    newNumbers: { make: first.tradeName, makeA: first.ratedA, largerCount: loom.length },
  };
}

function makeFor(makeId: string, currentA: number) {
  const family = makes.find(({ id }) => id === makeId)?.family;
  return (
    makes
      .filter((make) => make.family === family && make.ratedA !== null && make.ratedA >= currentA)
      .filter((make) => make.ratedUse === "thermal" || make.ratedUse === "rule")
      .sort((a, b) => (a.ratedA ?? 0) - (b.ratedA ?? 0))[0] ?? null
  );
}
