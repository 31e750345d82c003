import type { BackupContents, BackupRows, Restored } from "./backupRows.ts";
import type { JobsTable } from "./benchDatabase.ts";
import type { Queries, Writing } from "./database.ts";
import { nextSequence } from "./jobRows.ts";
import { newKey, sha256Of } from "./saveRows.ts";

type Revision = BackupRows["revisions"][number];
/** Where a job of the backup comes to stand here. */
interface Landing {
  readonly key: string;
  readonly isNew: boolean;
  readonly isBeside: boolean;
  readonly missing: readonly Revision[];
}

/**
 * Adds what a backup has and the storage has not, all or nothing. A job unknown here comes back under its key; one that stands at an earlier
 * revision here goes on; one that has gone another way since stays, and the backup's comes back beside it.
 */
export function restoreRows(
  queries: Queries,
  rows: BackupRows,
  contents: BackupContents,
): Promise<Restored> {
  return queries.transaction().execute(async (writing) => {
    await nextSequence(writing);
    const photographsAdded = await addPhotographs(writing, rows, contents);
    for (const row of rows.photographIds) await added(writing, "photograph_ids", { ...row });
    for (const row of rows.priceLists) await added(writing, "price_lists", { ...row });
    const counts = { jobsAdded: 0, revisionsAdded: 0, jobsBeside: 0 };
    for (const job of rows.jobs) {
      const revisions = rows.revisions
        .filter((row) => row.job_key === job.key)
        .sort((a, b) => a.revision - b.revision);
      const landing = await landingOf(writing, job.key, revisions);
      await addRevisions(writing, job, landing, contents);
      await addWhatHangsOnIt(writing, rows, job.key, landing);
      counts.jobsAdded += landing.isNew ? 1 : 0;
      counts.jobsBeside += landing.isBeside ? 1 : 0;
      counts.revisionsAdded += landing.missing.length;
    }
    return { ...counts, photographsAdded };
  });
}

async function addPhotographs(
  writing: Writing,
  rows: BackupRows,
  { photograph }: BackupContents,
): Promise<number> {
  let count = 0;
  for (const row of rows.photographs) {
    const { numInsertedOrUpdatedRows } = await writing
      .insertInto("photographs")
      .values({ ...row, bytes: photograph(row.sha256) })
      .onConflict((conflict) => conflict.doNothing())
      .executeTakeFirst();
    count += Number(numInsertedOrUpdatedRows ?? 0n);
  }
  return count;
}

async function landingOf(
  writing: Writing,
  key: string,
  revisions: readonly Revision[],
): Promise<Landing> {
  const here = (at: string) =>
    writing
      .selectFrom("revisions")
      .select(["revision", "sha256"])
      .where("job_key", "=", at)
      .orderBy("revision")
      .execute();
  const agrees = (known: readonly { readonly sha256: string }[]): boolean =>
    known.every(({ sha256 }, i) => revisions[i] === undefined || revisions[i].sha256 === sha256);
  const known = await here(key);
  if (agrees(known)) {
    const missing = revisions.slice(known.length);
    return { key, isNew: known.length === 0, isBeside: false, missing };
  }
  // Named by what it holds, so that restoring the same backup twice adds it once.
  const name = `${key} ${revisions.map(({ sha256 }) => sha256).join(" ")}`;
  const besideKey = sha256Of(name).slice(0, key.length);
  const isNew = (await here(besideKey)).length === 0;
  return { key: besideKey, isNew, isBeside: isNew, missing: isNew ? revisions : [] };
}

async function addRevisions(
  writing: Writing,
  job: JobsTable,
  { key, isNew, missing }: Landing,
  { text }: BackupContents,
): Promise<void> {
  if (missing.length === 0) return;
  const sequence = await nextSequence(writing);
  const { is_archived, ...about } = job;
  const row = { ...about, key, sequence };
  if (isNew)
    await writing
      .insertInto("jobs")
      .values({ ...row, is_archived })
      .execute();
  else await writing.updateTable("jobs").set(row).where("key", "=", key).execute();
  for (const revision of missing) {
    const taken = await writing
      .selectFrom("revisions")
      .select("revision")
      .where("change_id", "=", revision.change_id)
      .executeTakeFirst();
    const change_id = taken === undefined ? revision.change_id : newKey();
    await writing
      .insertInto("revisions")
      .values({ ...revision, job_key: key, change_id, text: text(job.key, revision.revision) })
      .execute();
  }
}

async function addWhatHangsOnIt(
  writing: Writing,
  rows: BackupRows,
  from: string,
  { key, isBeside }: Landing,
): Promise<void> {
  // Beside the original its conflicts and exercises are others, and need other ids.
  const idHere = (id: string): string =>
    key === from ? id : sha256Of(`${key} ${id}`).slice(0, id.length);
  if (key !== from && !isBeside) return;
  const belongs = (row: { readonly job_key: string }): boolean => row.job_key === from;
  for (const row of rows.jobPhotographs.filter(belongs)) {
    await added(writing, "job_photographs", { ...row, job_key: key });
  }
  const conflicts = rows.conflicts.filter(belongs);
  for (const row of conflicts) {
    await added(writing, "conflicts", { ...row, id: idHere(row.id), job_key: key });
  }
  const conflictIds = new Set(conflicts.map(({ id }) => id));
  for (const row of rows.settlements.filter((one) => conflictIds.has(one.conflict_id))) {
    await added(writing, "settlements", { ...row, conflict_id: idHere(row.conflict_id) });
  }
  const exercises = rows.exercises.filter(belongs);
  for (const row of exercises) {
    await added(writing, "exercises", { ...row, id: idHere(row.id), job_key: key });
  }
  const exerciseIds = new Set(exercises.map(({ id }) => id));
  const ofExercise = (row: { readonly exercise_id: string }) => exerciseIds.has(row.exercise_id);
  for (const row of rows.exerciseStarts.filter(ofExercise)) {
    await added(writing, "exercise_starts", { ...row, exercise_id: idHere(row.exercise_id) });
  }
  for (const row of rows.guesses.filter(ofExercise)) {
    const moved = { id: idHere(row.id), exercise_id: idHere(row.exercise_id) };
    await added(writing, "guesses", { ...row, ...moved });
  }
}

type Hanging =
  | "job_photographs"
  | "conflicts"
  | "settlements"
  | "exercises"
  | "exercise_starts"
  | "guesses"
  | "price_lists"
  | "photograph_ids";

async function added(
  writing: Writing,
  table: Hanging,
  row: Readonly<Record<string, string | number | null>>,
): Promise<void> {
  await writing
    .insertInto(table)
    .values(row as never)
    .onConflict((conflict) => conflict.doNothing())
    .execute();
}
