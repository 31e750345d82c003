import { pinsOf, type Wire } from "../../job/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { colourKey } from "./colourKey.ts";
import { wireNets } from "./wireNets.ts";

interface Job {
  readonly purpose: string;
  readonly wires: readonly Wire[];
  readonly circuits: ReadonlySet<string>;
  readonly stations: ReadonlySet<string>;
}

/** One colour on nets that have nothing to do with each other and end at one place: the colour no longer says what the wire is. */
export const colourSeveralJobs: Judge = ({ job }) => {
  const nets = wireNets(job);
  const pins = pinsOf(job);
  const byColour = new Map<string, Map<string, Wire[]>>();
  for (const wire of [...job.wires].sort((a, b) => (a.id < b.id ? -1 : 1))) {
    if (wire.colour === undefined) continue;
    const purposes = byColour.get(colourKey(wire.colour)) ?? new Map<string, Wire[]>();
    byColour.set(colourKey(wire.colour), purposes);
    const purpose = nets.purposeOf(wire.from);
    purposes.set(purpose, [...(purposes.get(purpose) ?? []), wire]);
  }
  const jobOf = ([purpose, wires]: [string, Wire[]]): Job => ({
    purpose,
    wires,
    circuits: new Set(wires.map(({ circuit }) => circuit)),
    stations: new Set(
      wires.flatMap(({ from, to }) => [from, to].flatMap((pin) => pins.get(pin)?.station ?? [])),
    ),
  });
  const mixed = [...byColour]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([key, purposes]) => {
      const unlike = unlikeJobs([...purposes].map(jobOf));
      return unlike.length < 2 ? [] : [{ key, unlike }];
    });
  const wires = mixed.flatMap(({ unlike }) => unlike.map((one) => one.wires[0]!.id));
  const [first, ...others] = wires;
  if (first === undefined) return [];
  return [
    findingOf({
      code: "colour-several-jobs",
      severity: "advise",
      subject: { kind: "wire", id: first },
      also: others,
      numbers: {
        colours: mixed
          .map(({ key, unlike }) => `${key} (${unlike.map((one) => one.wires[0]!.id).join(", ")})`)
          .join("; "),
      },
      limit: null,
    }),
  ];
};

const meet = (a: ReadonlySet<string>, b: ReadonlySet<string>): boolean =>
  [...a].some((one) => b.has(one));

/** Jobs that share a station with another of them and no circuit. */
const unlikeJobs = (jobs: readonly Job[]): readonly Job[] =>
  jobs.filter((one) =>
    jobs.some(
      (other) =>
        other !== one && meet(one.stations, other.stations) && !meet(one.circuits, other.circuits),
    ),
  );
