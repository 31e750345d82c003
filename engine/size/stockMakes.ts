import { type Job, presentWires } from "../job/index.ts";
import { type MakeFields, makeFields } from "../route/index.ts";
import { wires } from "../tables/index.ts";

/** What the engine chooses among, by rising copper. */
export interface Stock {
  /** For wires of a loom. */
  readonly loom: readonly MakeFields[];
  /** For the cables of a starter: the same and battery cable beyond it. */
  readonly starter: readonly MakeFields[];
}

const LOOM_FAMILY = "thin wall, ISO 6722 class B";
const CABLE_FAMILY = "battery and starter, flexible PVC";

/** The workshop's own stock where the job says, else rated thin-wall wire of today, one make a size, and battery cable. */
export function stockOf(job: Job): Stock {
  const { stockMakes } = job.decisions;
  if (stockMakes !== undefined) {
    const own = rising(stockMakes);
    return { loom: own, starter: own };
  }
  const seen = new Set<number>();
  const loom = wires.filter(({ family, isStockedNow, ratedA, nominalMm2 }) => {
    if (family !== LOOM_FAMILY || !isStockedNow || ratedA === null || nominalMm2 === null)
      return false;
    if (seen.has(nominalMm2)) return false;
    seen.add(nominalMm2);
    return true;
  });
  const cable = wires.filter(
    ({ family, isStockedNow, nominalMm2 }) =>
      family === CABLE_FAMILY && isStockedNow && !seen.has(nominalMm2 ?? 0),
  );
  return {
    loom: rising(loom.map(({ id }) => id)),
    starter: rising([...loom, ...cable].map(({ id }) => id)),
  };
}

const rising = (makeIds: readonly string[]): readonly MakeFields[] =>
  makeIds.map(makeFields).sort((a, b) => a.areaMm2 - b.areaMm2 || (a.makeId < b.makeId ? -1 : 1));

/** Makes each wire may have: the person's alone where fixed, else the stock. */
export function makesByWire(
  job: Job,
  stock: Stock,
  starterCables: ReadonlySet<string>,
): ReadonlyMap<string, readonly MakeFields[]> {
  const chosen = new Map<string, readonly MakeFields[]>();
  const alone = (makeId: string): readonly MakeFields[] => {
    const made = chosen.get(makeId) ?? [makeFields(makeId)];
    chosen.set(makeId, made);
    return made;
  };
  return new Map(
    presentWires(job).map(({ id, size }) => {
      if (size !== undefined) return [id, alone(size.make)] as const;
      return [id, starterCables.has(id) ? stock.starter : stock.loom] as const;
    }),
  );
}
