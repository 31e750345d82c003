import { idMaker, type Job, type Operation, type Wire } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import { fusesOf } from "./allWires.ts";
import { type LiveEnd, liveEnd } from "./liveEnd.ts";
import {
  bladeFuse,
  bladeRatings,
  LOAD_RATIO,
  newWire,
  setOfWire,
  stationOfPin,
} from "./newParts.ts";
import type { ProvedFuse, ProvedWire } from "./proveResult.ts";
import { relayChange } from "./relayChange.ts";

/** A change of the job worth trying, as operations a face can do. */
export interface TriedChange {
  readonly kind: "move" | "lead-fuse" | "relay";
  readonly operations: readonly Operation[];
  readonly numbers: Readonly<Record<string, number | string>>;
}

/** Changes that could mend a wire no fuse saves, the smallest first: its end moved behind a fuse, a fuse put before it, a relay for its load. */
export function structuralChanges(
  compiled: CompiledJob,
  { wire, lastingA, worst }: Pick<ProvedWire, "wire" | "lastingA" | "worst">,
  fuses: readonly Pick<ProvedFuse, "fuse" | "lastingA">[],
): readonly TriedChange[] {
  const { job } = compiled;
  const item = job.wires.find(({ id }) => id === wire);
  const end = liveEnd(compiled, wire);
  if (item === undefined || end === null) return [];
  const [ratingA] = bladeRatings(lastingA);
  const guard = fuses.find(({ fuse }) => fuse === worst?.cut[0]);
  return [
    ...moves(job, item, end, lastingA),
    ...(ratingA === undefined ? [] : [leadFuse(compiled, item, end, ratingA)]),
    ...relayChange(compiled, item, end, { loadA: lastingA, guard }),
  ];
}

/** Fuses tried as the new place of a wire's live end. */
const MOST_MOVES = 2;

/** The wire's live end set on the far side of a fuse that hangs on the same copper; the smallest that carries its load first. */
function moves(
  job: Job,
  { id }: Wire,
  { end, fuses }: LiveEnd,
  lastingA: number,
): readonly TriedChange[] {
  const parts = fusesOf(job);
  return fuses
    .map((one) => ({ ...one, ratingA: parts.get(one.id)!.ratingA }))
    .filter(({ ratingA, farPin }) => ratingA * LOAD_RATIO >= lastingA && !farPin.endsWith("~"))
    .sort((a, b) => a.ratingA - b.ratingA || (a.id < b.id ? -1 : 1))
    .slice(0, MOST_MOVES)
    .map(({ id: newFuse, farPin }) => ({
      kind: "move",
      operations: [setOfWire(id, end, farPin)],
      numbers: { toPin: farPin, newFuse },
    }));
}

/** A new blade fuse at the live end of a wire, with a short lead to it of the same copper. */
function leadFuse(
  { job, conductors }: CompiledJob,
  wire: Wire,
  { end, pin }: LiveEnd,
  newFuseA: number,
): TriedChange {
  const newId = idMaker(job);
  const newFuse = newId("F");
  const { makeId } = conductors.get(wire.id)!;
  const operations = [
    bladeFuse(newFuse, newFuseA, stationOfPin(job, pin)),
    setOfWire(wire.id, end, `${newFuse}.OUT`),
    setOfWire(wire.id, `${end}End`),
    newWire(newId("W"), [pin, `${newFuse}.IN`], wire, makeId),
  ];
  return { kind: "lead-fuse", operations, numbers: { newFuseA, newFuse } };
}
