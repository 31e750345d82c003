import { nearestWord } from "../../messages/index.ts";
import type { Job } from "../job.ts";
import { type Load, loadsOf } from "../loadsOf.ts";
import { type PinPlace, pinsOf } from "../pinsOf.ts";
import type { JsonPath } from "../read/jsonPointer.ts";
import { placeInWords } from "./placeInWords.ts";

/** The job with what every check looks up, gathered once. */
export interface JobIndex {
  readonly job: Job;
  readonly pins: ReadonlyMap<string, PinPlace>;
  /** Pin ids of each part, joint, connector and body. */
  readonly pinsOfOwner: ReadonlyMap<string, ReadonlySet<string>>;
  readonly stations: ReadonlySet<string>;
  readonly runs: ReadonlySet<string>;
  readonly circuits: ReadonlySet<string>;
  readonly looms: ReadonlySet<string>;
  /** Position ids of each switch. */
  readonly positions: ReadonlyMap<string, ReadonlySet<string>>;
  readonly loads: ReadonlyMap<string, Load>;
  readonly place: (path: JsonPath) => string;
}

export function jobIndex(job: Job): JobIndex {
  const pins = pinsOf(job);
  const pinsOfOwner = new Map<string, Set<string>>();
  for (const { id } of [...job.parts, ...job.joints, ...job.connectors, ...job.bodies]) {
    pinsOfOwner.set(id, new Set());
  }
  for (const { owner, pinId } of pins.values()) pinsOfOwner.get(owner)!.add(pinId);
  const ids = (items: readonly { readonly id: string }[]) => new Set(items.map((item) => item.id));
  const switches = job.parts.filter((part) => part.kind === "switch");
  return {
    job,
    pins,
    pinsOfOwner,
    stations: ids(job.stations),
    runs: ids(job.runs),
    circuits: ids(job.circuits),
    looms: ids(job.looms),
    positions: new Map(switches.map((part) => [part.id, ids(part.positions)])),
    loads: new Map(loadsOf(job).map((load) => [load.ref, load])),
    place: (path) => placeInWords(job, path),
  };
}

/** What to do about a name nothing answers to: the one most like it, or what there is. */
export function suggestionFor(word: string, known: Iterable<string>, what: string): string {
  const all = [...known];
  const nearest = nearestWord(word, all);
  if (nearest !== null) return `Did you mean "${nearest}"?`;
  if (all.length === 0) return `Add ${what}.`;
  if (all.length > 12) return `Name ${what} of this job, or add it.`;
  return `Name ${what} of this job (${all.join(", ")}), or add it.`;
}
