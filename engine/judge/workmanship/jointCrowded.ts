import { type JointMark, jointMarks } from "../../route/index.ts";
import { type Figure, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";
import { isSplice } from "./jointsSeen.ts";

/** A splice nearer than it may be to another joint, to a branch of the loom or to a connector. One finding a run. */
export const jointCrowded: Judge = ({ job, routed, conductors }) => {
  const limit = figure("loomRules", "joint-spacing", "value");
  const splices = new Set(job.joints.filter(isSplice).map(({ id }) => id));
  const byRun = new Map<string, JointMark[]>();
  for (const mark of jointMarks(job, routed, conductors)) {
    if (mark.place?.kind !== "run" || !splices.has(mark.joint)) continue;
    if (mark.nearest === null || mark.nearest.distanceMm >= limit.value) continue;
    byRun.set(mark.place.run, [...(byRun.get(mark.place.run) ?? []), mark]);
  }
  return [...byRun]
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([run, marks]) => crowdedOn(run, marks, limit));
};

function crowdedOn(run: string, marks: readonly JointMark[], limit: Figure) {
  const sorted = [...marks].sort(
    (a, b) => a.nearest!.distanceMm - b.nearest!.distanceMm || (a.joint < b.joint ? -1 : 1),
  );
  const { joint, nearest } = sorted[0]!;
  const { kind, id, distanceMm } = nearest!;
  const others = sorted.flatMap((mark) => [
    mark.joint,
    ...(mark.nearest!.kind === "joint" ? [mark.nearest!.id] : []),
  ]);
  return findingOf({
    code: "joint-crowded",
    severity: "mend",
    subject: { kind: "joint", id: joint },
    also: others.filter((one) => one !== joint),
    numbers: { distanceMm, near: kind === "branch" ? `the branch at ${id}` : `${kind} ${id}`, run },
    limit,
  });
}
