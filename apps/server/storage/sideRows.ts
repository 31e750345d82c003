import type { Queries } from "./database.ts";
import type { Storage, StoredConflict } from "./storage.ts";

/** Beside jobs and revisions: conflicts, and the server's own small records. */
export function sideRows(queries: Queries): Pick<Storage, "conflicts" | "keep" | "putKeep"> {
  return {
    conflicts: (key, ofRevision) => conflictsOf(queries, key, ofRevision),
    keep: async (name) => {
      const row = await queries
        .selectFrom("keep")
        .select("text")
        .where("name", "=", name)
        .executeTakeFirst();
      return row?.text ?? null;
    },
    putKeep: async (name, text) => {
      await queries
        .insertInto("keep")
        .values({ name, text })
        .onConflict((conflict) => conflict.column("name").doUpdateSet({ text }))
        .execute();
    },
  };
}

async function conflictsOf(
  queries: Queries,
  key: string,
  ofRevision: number | undefined,
): Promise<readonly StoredConflict[]> {
  const all = queries
    .selectFrom("conflicts")
    .selectAll()
    .where("job_key", "=", key)
    .orderBy("revision")
    .orderBy("place");
  const settled = queries.selectFrom("settlements").select("conflict_id");
  const query =
    ofRevision === undefined
      ? all.where("id", "not in", settled)
      : all.where("revision", "=", ofRevision);
  return (await query.execute()).map((row) => ({
    id: row.id,
    revision: row.revision,
    conflict: JSON.parse(row.conflict),
    mineBy: row.mine_by,
    theirsBy: row.theirs_by,
    madeAt: row.made_at,
  }));
}
