import { type Job, type Operation, resizeWire, setFuseRating } from "../job/index.ts";
import { type Conductors, makeFields } from "../route/index.ts";
import { allTables, wires as makes } from "../tables/index.ts";

/** One size up or down of a fuse or of a wire: what a hand would try first. Whether it helps is for a check of the changed job to say. */
export type ChangeToTry =
  | {
      readonly kind: "fuse";
      readonly fuse: string;
      readonly ratingA: number;
      readonly operation: Operation;
    }
  | {
      readonly kind: "wire";
      readonly wire: string;
      readonly make: string;
      readonly areaMm2: number;
      readonly operation: Operation;
    };

const MOST_CHANGES = 6;

/**
 * The next standard rating below and above each fuse, and the next thicker make of the same family for each wire, in the order they are named.
 *
 * @param ids  parts and wires a finding names; what is neither fuse nor wire of the loom is passed over.
 */
export function changesToTry(
  job: Job,
  conductors: Conductors,
  ids: readonly string[],
): readonly ChangeToTry[] {
  const changes = [...new Set(ids)].flatMap((id): readonly ChangeToTry[] => {
    const part = job.parts.find((one) => one.id === id);
    if (part?.kind === "fuse") {
      return ratingsBeside(part.type, part.ratingA).map((ratingA) => ({
        kind: "fuse",
        fuse: id,
        ratingA,
        operation: setFuseRating(id, ratingA),
      }));
    }
    const isWire = job.wires.some((one) => one.id === id);
    const make = isWire ? thickerMake(conductors.get(id)?.makeId) : null;
    if (make === null) return [];
    const operation = resizeWire({ wire: id, make });
    return [{ kind: "wire", wire: id, make, areaMm2: makeFields(make).areaMm2, operation }];
  });
  return changes.slice(0, MOST_CHANGES);
}

/** Largest standard rating below and smallest above, of the fuse's own kind. */
function ratingsBeside(type: string, ratingA: number): readonly number[] {
  const ratings = allTables.fuseStandardRatings.rows
    .filter((row) => row.type === type)
    .map((row) => row.ratedA);
  const below = ratings.filter((one) => one < ratingA);
  const above = ratings.filter((one) => one > ratingA);
  return [
    ...(below.length > 0 ? [Math.max(...below)] : []),
    ...(above.length > 0 ? [Math.min(...above)] : []),
  ];
}

/** The thinnest make of the same family that is still sold and has more copper. */
function thickerMake(makeId: string | undefined): string | null {
  const own = makes.find(({ id }) => id === makeId);
  if (own === undefined) return null;
  const areaMm2 = makeFields(own.id).areaMm2;
  const thicker = makes
    .filter(({ family, isStockedNow }) => family === own.family && isStockedNow)
    .map(({ id }) => ({ id, areaMm2: makeFields(id).areaMm2 }))
    .filter((one) => one.areaMm2 > areaMm2)
    .sort((a, b) => a.areaMm2 - b.areaMm2 || (a.id < b.id ? -1 : 1));
  return thicker[0]?.id ?? null;
}
