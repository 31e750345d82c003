import type { Job, Joint } from "../../job/index.ts";
import { type Figure, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";
import { isSplice, type JointSeen, jointsSeen } from "./jointsSeen.ts";

/** Something a splice is too near to. */
interface Near {
  readonly joint: Joint;
  readonly what: string;
  /** The other splice, where it is one. */
  readonly other: string | null;
  readonly distanceMm: number;
}

/** A splice nearer than it may be to another splice of its run, to a branch of the loom or to a connector. One finding a run. */
export const jointCrowded: Judge = (design) => {
  const limit = figure("loomRules", "joint-spacing", "value");
  const byRun = new Map<string, JointSeen[]>();
  for (const seen of jointsSeen(design)) {
    if (seen.along === null || !isSplice(seen.joint)) continue;
    const { id } = seen.along.run;
    byRun.set(id, [...(byRun.get(id) ?? []), seen]);
  }
  const branchCount = branchCounts(design);
  return [...byRun]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .flatMap(([run, splices]) => {
      const near = [...nearSplices(splices), ...nearEnds(design.job, splices, branchCount)]
        .filter(({ distanceMm }) => distanceMm < limit.value)
        .sort((a, b) => a.distanceMm - b.distanceMm || (a.joint.id < b.joint.id ? -1 : 1));
      return near.length === 0 ? [] : crowdedOn(run, near, limit);
    });
};

function crowdedOn(run: string, near: readonly Near[], limit: Figure) {
  const { joint, what, distanceMm } = near[0]!;
  const joints = near.flatMap((one) => [one.joint.id, one.other ?? one.joint.id]);
  return findingOf({
    code: "joint-crowded",
    severity: "mend",
    subject: { kind: "joint", id: joint.id },
    also: joints.filter((id) => id !== joint.id),
    numbers: { distanceMm, near: what, run },
    limit,
  });
}

function nearSplices(splices: readonly JointSeen[]): readonly Near[] {
  const along = [...splices].sort((a, b) => a.along!.offsetMm - b.along!.offsetMm);
  return along.slice(1).map((seen, i) => ({
    joint: along[i]!.joint,
    what: `splice ${seen.joint.id}`,
    other: seen.joint.id,
    distanceMm: seen.along!.offsetMm - along[i]!.along!.offsetMm,
  }));
}

function nearEnds(
  job: Job,
  splices: readonly JointSeen[],
  branchCount: ReadonlyMap<string, number>,
): readonly Near[] {
  const crowdedBy = (station: string): string | null => {
    const connector = job.connectors.find((one) => one.station === station);
    if (connector !== undefined) return `connector ${connector.id}`;
    return (branchCount.get(station) ?? 0) >= 3 ? `the branch at ${station}` : null;
  };
  return splices.flatMap(({ joint, along }) => {
    const { run, offsetMm } = along!;
    const ends = [
      { station: run.from, distanceMm: offsetMm },
      { station: run.to, distanceMm: (run.lengthMm?.value ?? Infinity) - offsetMm },
    ];
    return ends.flatMap(({ station, distanceMm }) => {
      const what = crowdedBy(station);
      return what === null ? [] : [{ joint, what, other: null, distanceMm }];
    });
  });
}

/** How many runs with wires in them meet at each station: three are a branch. */
function branchCounts({ job, routed }: Design): ReadonlyMap<string, number> {
  const used = new Set(routed.stretches.map(({ run }) => run));
  const counts = new Map<string, number>();
  for (const { id, from, to } of job.runs) {
    if (!used.has(id)) continue;
    for (const station of [from, to]) counts.set(station, (counts.get(station) ?? 0) + 1);
  }
  return counts;
}
