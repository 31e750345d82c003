import type { Job } from "../../job/index.ts";
import type { Conductor, Conductors } from "../../route/index.ts";

/**
 * Which of two jobs that share what is equal in them (`sharedWith`) are the same to a stage. Every question is answered by comparing
 * all the stage reads; a field it may read is never left out, one it does not read may be.
 */

type Item = object;
type Same<T> = (before: T, after: T) => boolean;

function sameItems<T extends Item>(
  before: readonly T[],
  after: readonly T[],
  same: Same<T>,
): boolean {
  if (before === after) return true;
  return before.length === after.length && after.every((one, i) => same(before[i]!, one));
}

/** Alike in these fields. */
const alikeIn =
  <T extends Item>(...names: readonly (keyof T)[]): Same<T> =>
  (before, after) =>
    before === after || names.every((name) => before[name] === after[name]);

/** Alike in every field but these, which only people and sheets read. */
function inAllBut<T extends Item>(...names: readonly string[]): Same<T> {
  const unread = new Set(names);
  const missed = (one: T, other: T): boolean =>
    Object.keys(one).some(
      (name) => !unread.has(name) && Reflect.get(one, name) !== Reflect.get(other, name),
    );
  return (before, after) => before === after || !(missed(before, after) || missed(after, before));
}

type Part = Job["parts"][number];
type Wire = Job["wires"][number];
type Joint = Job["joints"][number];
type Connector = Job["connectors"][number];

const partAtWork = inAllBut<Part>("name", "note", "station");
const partInPlace = alikeIn<Part>("id", "station", "pins", "status");
const wireEnds = alikeIn<Wire>("id", "from", "to", "status");
const wireWay = alikeIn<Wire>("id", "from", "to", "status", "via", "lengthMm", "loom");
const jointAtWork = inAllBut<Joint>("name", "note", "station", "offset", "supported");
const jointInPlace = alikeIn<Joint>("id", "station", "offset", "ways", "status");
const connectorAtWork = inAllBut<Connector>("name", "note", "station", "rowCount");
const connectorInPlace = alikeIn<Connector>("id", "station", "cavities", "status");

/** What joins what, what every part does, and what the job says of its states: all that a network is made of but its copper. */
export const sameWiring = (before: Job, after: Job): boolean =>
  wiredAlike(before, after, partAtWork);

/** The same but for ratings of fuses: the same states, switched and joined alike; laws of fuses may differ. */
export const sameSwitching = (before: Job, after: Job): boolean =>
  wiredAlike(before, after, partButRating);

const fuseButRating = inAllBut<Part>("name", "note", "station", "ratingA");
const partButRating: Same<Part> = (before, after) =>
  partAtWork(before, after) ||
  (before.kind === "fuse" && after.kind === "fuse" && fuseButRating(before, after));

const wiredAlike = (before: Job, after: Job, sameParts: Same<Part>): boolean =>
  before.supply === after.supply &&
  before.bodies === after.bodies &&
  before.bonds === after.bonds &&
  before.intents === after.intents &&
  before.states === after.states &&
  before.exclusions === after.exclusions &&
  before.decisions.ambientC === after.decisions.ambientC &&
  sameItems(before.wires, after.wires, wireEnds) &&
  sameItems(before.parts, after.parts, sameParts) &&
  sameItems(before.joints, after.joints, jointAtWork) &&
  sameItems(before.connectors, after.connectors, connectorAtWork);

/** What the ways and lengths of wires and the air round them come from. */
export const sameLoom = (before: Job, after: Job): boolean =>
  sameLoomMap(before, after) && sameItems(before.wires, after.wires, wireWay);

/** What the way of any wire is found on. */
export const sameLoomMap = (before: Job, after: Job): boolean =>
  before.stations === after.stations &&
  before.runs === after.runs &&
  before.bodies === after.bodies &&
  before.decisions.ambientC === after.decisions.ambientC &&
  sameItems(before.parts, after.parts, partInPlace) &&
  sameItems(before.joints, after.joints, jointInPlace) &&
  sameItems(before.connectors, after.connectors, connectorInPlace);

/** Wires that go where they went, by id. */
export function samelyLaid(before: Job, after: Job): readonly string[] {
  const byId = new Map(before.wires.map((wire) => [wire.id, wire]));
  return after.wires.flatMap((wire) => {
    const was = byId.get(wire.id);
    return was !== undefined && wireWay(was, wire) ? [wire.id] : [];
  });
}

/** What a size is judged by beside wiring, ways, makes and fuses. */
export const sameSizingRules = (before: Job, after: Job): boolean =>
  before.supply === after.supply &&
  before.circuits === after.circuits &&
  before.looms === after.looms &&
  before.runs === after.runs &&
  before.decisions.dropLimits === after.decisions.dropLimits &&
  before.decisions.stockMakes === after.decisions.stockMakes;

function sameConductors(before: Conductors, after: Conductors, same: Same<Conductor>): boolean {
  if (before === after) return true;
  if (before.size !== after.size) return false;
  const earlier = before.values();
  for (const one of after.values()) if (!same(earlier.next().value!, one)) return false;
  return true;
}

/** Every conductor has the resistance it had. */
export const sameOhms = (before: Conductors, after: Conductors): boolean =>
  sameConductors(before, after, alikeIn<Conductor>("id", "lengthMm", "ohmPerM20Max"));

export const sameLengths = (before: Conductors, after: Conductors): boolean =>
  sameConductors(before, after, alikeIn<Conductor>("id", "lengthMm"));
