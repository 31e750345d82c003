import type { Job, Operation, Wire } from "../job/index.ts";
import { allTables } from "../tables/index.ts";

/** A fuse carries a lasting load up to this share of its rating: the usual rule, common practice. */
export const LOAD_RATIO = 0.75;
/** A new lead beside a fuse or relay, mm: to be measured when it is laid. */
const NEW_LEAD_MM = 150;

/** Standard blade ratings that carry a lasting load, the smallest first. */
export const bladeRatings = (loadA: number): readonly number[] =>
  allTables.fuseStandardRatings.rows
    .filter((row) => row.type === "blade" && row.ratedA * LOAD_RATIO >= loadA)
    .map((row) => row.ratedA)
    .sort((a, b) => a - b);

export const bladeFuse = (id: string, ratingA: number, station: string | undefined): Operation => ({
  op: "add",
  list: "parts",
  item: {
    id,
    name: `fuse ${ratingA} A`,
    ...(station === undefined ? {} : { station }),
    status: "new",
    pins: [{ id: "IN" }, { id: "OUT" }],
    kind: "fuse",
    ratingA,
    marking: "continuous",
    type: "blade",
  },
});

/** A new wire of a known make with what else it shares with another; its length an estimate. */
export const newWire = (
  id: string,
  ends: readonly [from: string, to: string],
  like: Pick<Wire, "circuit"> & Partial<Pick<Wire, "colour" | "loom">>,
  make: string,
  lengthMm = NEW_LEAD_MM,
): Operation => ({
  op: "add",
  list: "wires",
  item: {
    id,
    from: ends[0],
    to: ends[1],
    circuit: like.circuit,
    ...(like.colour ? { colour: like.colour } : {}),
    status: "new",
    size: { make, basis: "chosen" },
    lengthMm: { value: lengthMm, basis: "estimated" },
  },
});

export const setOfWire = (id: string, path: string, value?: unknown): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: [path],
  ...(value === undefined ? {} : { value }),
});

export function stationOfPin({ parts, joints }: Job, pin: string): string | undefined {
  const owner = pin.split(".")[0];
  return [...parts, ...joints].find(({ id }) => id === owner)?.station;
}
