import { JOB_VERSION, readJob } from "@copperwright/engine";
import { LARGEST_TEXT } from "../api/largestText.ts";
import { type Refused, refused } from "../api/refuse.ts";
import { type BackupContents, type BackupRows, sha256Of } from "../storage/index.ts";
import { type TextDelta, textFromDelta } from "./textDelta.ts";

/** Most signs all revisions may have together when written out: what the database would grow by. */
const MOST_SIGNS = 4_000_000_000;

const damaged = (fault: string): Refused => refused("backup-unreadable", { fault });

/**
 * The texts of a backup's revisions, each followed through once and compared with its hash; the newest of each job must be a job that can be
 * read. Written out one at a time, so that they are never in memory together.
 */
export async function backupTexts(
  rows: BackupRows,
  deltas: readonly TextDelta[],
): Promise<({ readonly ok: true } & Pick<BackupContents, "text">) | Refused> {
  const { revisions } = rows;
  if (deltas.length !== revisions.length) return damaged("a text is missing");
  const heads = new Map(rows.jobs.map(({ key, revision }) => [key, revision]));
  const text = textFollower(revisions, deltas);
  let signCount = 0;
  for (const [i, row] of revisions.entries()) {
    const now = text(i);
    if (now === null) return damaged(`revision ${row.revision} has no whole text`);
    signCount += now.length;
    if (now.length > LARGEST_TEXT || signCount > MOST_SIGNS) {
      return refused("backup-too-large", { limit: `${MOST_SIGNS / 1e9} GB of texts` });
    }
    if (sha256Of(now) !== row.sha256) return damaged(`revision ${row.revision} is not as it was`);
    if (heads.get(row.job_key) !== row.revision) continue;
    if (row.job_version > JOB_VERSION) return refused("backup-newer", {});
    const read = readJob(now);
    if (!read.ok) return damaged(`a job cannot be read: ${read.refusals[0]?.message ?? ""}`);
    // Reading takes its time; others are served in between.
    await new Promise((resolve) => setImmediate(resolve));
  }
  const placeOf = new Map(revisions.map((row, i) => [`${row.job_key}/${row.revision}`, i]));
  return {
    ok: true,
    text: (key, revision) => {
      const now = text(placeOf.get(`${key}/${revision}`) ?? -1);
      if (now === null) throw new Error("a revision that was checked is gone");
      return now;
    },
  };
}

/** Text by place. Going on from the one before is quick; anywhere else it is followed from the job's first. */
function textFollower(
  revisions: BackupRows["revisions"],
  deltas: readonly TextDelta[],
): (place: number) => string | null {
  const firstRevision = new Map<string, number>();
  for (const { job_key, revision } of revisions) {
    if (!firstRevision.has(job_key)) firstRevision.set(job_key, revision);
  }
  let at = { place: -1, text: "" };
  return (place) => {
    const row = revisions[place];
    if (row === undefined) return null;
    const firstPlace = place - row.revision + (firstRevision.get(row.job_key) ?? row.revision);
    if (at.place < firstPlace || at.place > place) at = { place: firstPlace - 1, text: "" };
    for (let i = at.place + 1; i <= place; i++) {
      const text = textFromDelta(at.text, deltas[i]!);
      if (text === null) return null;
      at = { place: i, text };
    }
    return at.text;
  };
}
