import { type Job, type Joint, pinRef, type Wire } from "../../job/index.ts";
import type { Design } from "../judge.ts";

/** A joint with what goes into it and where it lies. */
export interface JointSeen {
  readonly joint: Joint;
  /** Wires by id; one that begins and ends here stands twice. */
  readonly wires: readonly Wire[];
  /** Straps and cases fastened to a way. */
  readonly bondCount: number;
  /** Run it lies along and how far from the run's `from` station, mm; null where only a station is stated. */
  readonly along: { readonly run: Job["runs"][number]; readonly offsetMm: number } | null;
}

/** Joints whose conductors share one barrel or one lump of solder: what is said of splices is said of these. */
export const isSplice = ({ kind }: Joint): boolean =>
  kind === "crimped-splice" || kind === "soldered" || kind === "twisted";

/** Every joint that will be on the machine, by id. */
export function jointsSeen({ job, wiresAt }: Pick<Design, "job" | "wiresAt">): JointSeen[] {
  const runs = new Map(job.runs.map((run) => [run.id, run]));
  return [...job.joints]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((joint) => {
      const ways = new Set(joint.ways.map((way) => pinRef(joint.id, way)));
      const wires = [...ways].flatMap((way) => wiresAt.get(way) ?? []);
      const bonds = job.bonds.filter(({ from, to }) => ways.has(from) || ways.has(to));
      const run = runs.get(joint.offset?.run ?? "");
      return {
        joint,
        wires: [...wires].sort((a, b) => (a.id < b.id ? -1 : 1)),
        bondCount: bonds.length,
        along: run === undefined ? null : { run, offsetMm: joint.offset!.mm.value },
      };
    });
}
