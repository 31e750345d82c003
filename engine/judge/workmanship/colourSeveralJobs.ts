import type { Wire } from "../../job/index.ts";
import { colourSchemes } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { colourKey, schemeKey } from "./colourKey.ts";
import { wireNets } from "./wireNets.ts";

/** Wires of one colour and one net, with what they belong to and where they pass. */
interface Task {
  readonly wires: readonly Wire[];
  readonly circuits: ReadonlySet<string>;
  readonly owners: ReadonlySet<string>;
  readonly stations: ReadonlySet<string>;
}

/** Feeds keep their colour through every fuse and switch. */
const FEEDS: ReadonlySet<string> = new Set(["battery-live", "switched-live", "earth"]);

/**
 * One colour on nets that have nothing to do with each other (no circuit and no part in common) and pass one place: there the
 * colour no longer says what a wire is.
 */
export const colourSeveralJobs: Judge = (design) => {
  const nets = wireNets(design.job);
  const feeds = new Set(
    colourSchemes
      .filter((row) => row.scheme === design.job.colours.scheme && FEEDS.has(row.role ?? ""))
      .map(schemeKey),
  );
  const byColour = new Map<string, Map<string, Wire[]>>();
  for (const wire of [...design.job.wires].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    if (wire.colour === undefined || nets.isEarth(wire.from)) continue;
    const key = colourKey(wire.colour);
    if (feeds.has(key)) continue;
    const purposes = byColour.get(key) ?? new Map<string, Wire[]>();
    byColour.set(key, purposes);
    const purpose = nets.purposeOf(wire.from);
    purposes.set(purpose, [...(purposes.get(purpose) ?? []), wire]);
  }
  const mixed = [...byColour]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([key, purposes]) => {
      const unlike = unlikeTasks([...purposes.values()].map((wires) => taskOf(design, wires)));
      return unlike.length < 2 ? [] : [{ key, ids: unlike.map(({ wires }) => wires[0]!.id) }];
    });
  const [first, ...others] = mixed.flatMap(({ ids }) => ids);
  if (first === undefined) return [];
  return [
    findingOf({
      code: "colour-several-jobs",
      severity: "advise",
      subject: { kind: "wire", id: first },
      also: others,
      numbers: { colours: mixed.map(({ key, ids }) => `${key} (${ids.join(", ")})`).join("; ") },
      limit: null,
    }),
  ];
};

function taskOf({ pins, routed }: Design, wires: readonly Wire[]): Task {
  const ends = wires.flatMap(({ from, to }) => [from, to]).flatMap((pin) => pins.get(pin) ?? []);
  return {
    wires,
    circuits: new Set(wires.map(({ circuit }) => circuit)),
    owners: new Set(ends.filter((end) => end.ownerKind === "part").map(({ owner }) => owner)),
    stations: new Set(wires.flatMap(({ id }) => routed.wires.get(id)?.stations ?? [])),
  };
}

const meet = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  [...a].some((one) => b.has(one));

const unlikeTasks = (tasks: readonly Task[]): readonly Task[] =>
  tasks.filter((one) =>
    tasks.some(
      (other) =>
        other !== one &&
        meet(one.stations, other.stations) &&
        !meet(one.circuits, other.circuits) &&
        !meet(one.owners, other.owners),
    ),
  );
