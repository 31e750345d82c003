import {
  applyOperation,
  JOB_VERSION,
  type Job,
  mergeJobs,
  type Operation,
} from "@copperwright/engine";
import type { Hand, Storage } from "../storage/index.ts";
import { type Refused, refused } from "./refuse.ts";
import type { Change } from "./requestSchemas.ts";
import { saveOnHead } from "./saveOnHead.ts";
import { storedJob } from "./storedJob.ts";

/**
 * A change a device made to some revision, saved as the newest. The same change sent again is the same change. Where others saved since,
 * the three are merged; what cannot both stand is stored as conflicts with the revision.
 */
export async function saveChange(
  storage: Storage,
  key: string,
  change: Change,
  hand: Hand,
): Promise<{ readonly ok: true; readonly revision: number } | Refused> {
  const known = await storage.changeDone(change.changeId);
  if (known !== null) {
    return known.key === key
      ? { ok: true, revision: known.revision }
      : refused("change-id-taken", {});
  }
  if (change.jobVersion !== JOB_VERSION) {
    return refused(change.jobVersion > JOB_VERSION ? "app-newer" : "app-older", {});
  }
  if ((await storage.job(key)) === null) return refused("no-such-job", {});
  const base = await storedJob(storage, key, change.baseRevision);
  if (!base.ok) return base;
  const mine = changedJob(base.job, change);
  if (!mine.ok) return mine;

  const { changeId, what, summary } = change;
  const words = {
    changeId,
    whatChanged: what,
    hand,
    ...(summary === undefined ? {} : { summary }),
  };
  return saveOnHead(storage, key, words, (head) => {
    if (head.revision === change.baseRevision) return mine;
    const { job, conflicts } = mergeJobs(base.job, mine.job, head.job);
    const theirsBy = head.savedBy;
    return { ok: true, job, conflicts: conflicts.map((conflict) => ({ conflict, theirsBy })) };
  });
}

function changedJob(
  base: Job,
  { operations, what, baseRevision }: Change,
): { readonly ok: true; readonly job: Job } | Refused {
  // Its form is the engine's to judge.
  const steps = operations as readonly Operation[];
  const [first] = steps;
  const whole: Operation =
    steps.length === 1 ? first! : { op: "batch", name: what.slice(0, 200), operations: steps };
  const done = applyOperation(base, whole);
  return done.ok ? done : refused("change-refused", { revision: baseRevision }, done.refusals);
}
