import type { Queries } from "./database.ts";
import type { Storage } from "./storage.ts";

/** Most jobs one poll answers with; the next poll goes on from there. */
const POLLED_COUNT = 500;

/** Looking up jobs and their revisions. */
export function jobRows(
  queries: Queries,
): Pick<
  Storage,
  "jobs" | "job" | "jobsSince" | "revision" | "revisions" | "changeDone" | "archiveJob"
> {
  const revisions = (key: string) =>
    queries.selectFrom("revisions").where("job_key", "=", key).orderBy("revision", "desc");
  return {
    jobs: () => queries.selectFrom("jobs").selectAll().orderBy("sequence", "desc").execute(),
    job: async (key) =>
      (await queries.selectFrom("jobs").selectAll().where("key", "=", key).executeTakeFirst()) ??
      null,
    jobsSince: (sequence) =>
      queries
        .selectFrom("jobs")
        .select(["key", "revision", "sequence", "saved_at", "saved_by", "device"])
        .where("sequence", ">", sequence)
        .orderBy("sequence")
        .limit(POLLED_COUNT)
        .execute(),
    revision: async (key, revision) => {
      const query = revisions(key).selectAll().limit(1);
      const named = revision === undefined ? query : query.where("revision", "=", revision);
      return (await named.executeTakeFirst()) ?? null;
    },
    revisions: (key) =>
      revisions(key)
        .select(["job_key", "revision", "sha256", "job_version", "saved_at", "saved_by"])
        .select(["device", "what_changed", "change_id"])
        .execute(),
    changeDone: async (changeId) => {
      const row = await queries
        .selectFrom("revisions")
        .select(["job_key as key", "revision"])
        .where("change_id", "=", changeId)
        .executeTakeFirst();
      return row ?? null;
    },
    archiveJob: (key, isArchived) =>
      queries.transaction().execute(async (writing) => {
        const sequence = await nextSequence(writing);
        const { numUpdatedRows } = await writing
          .updateTable("jobs")
          .set({ is_archived: isArchived ? 1 : 0, sequence })
          .where("key", "=", key)
          .executeTakeFirstOrThrow();
        return numUpdatedRows > 0n;
      }),
  };
}

/**
 * The next number of the whole database. Always the first thing a save does: whoever has it holds the row until the save is done, so
 * that saves follow one another, numbers become visible in their order, and no poll can step over one.
 */
export async function nextSequence(writing: Queries): Promise<number> {
  const { value } = await writing
    .updateTable("counters")
    .set((row) => ({ value: row("value", "+", 1) }))
    .where("name", "=", "sequence")
    .returning("value")
    .executeTakeFirstOrThrow();
  return value;
}
