import type { Queries } from "./database.ts";
import type { Storage, StoredConflict } from "./storage.ts";

/** What hangs on jobs and revisions: conflicts, photographs, the server's own small records. */
export function sideRows(
  queries: Queries,
): Pick<
  Storage,
  "conflicts" | "addPhotograph" | "photograph" | "photographsOf" | "keep" | "putKeep"
> {
  return {
    conflicts: (key, ofRevision) => conflictsOf(queries, key, ofRevision),
    addPhotograph: (key, name, { sha256, widthPx, heightPx, bytes }, hand) =>
      queries.transaction().execute(async (writing) => {
        await writing
          .insertInto("photographs")
          .values({ sha256, width_px: widthPx, height_px: heightPx, bytes })
          .onConflict((conflict) => conflict.doNothing())
          .execute();
        await writing
          .insertInto("job_photographs")
          .values({ job_key: key, sha256, name, added_at: hand.at, added_by: hand.who })
          .onConflict((conflict) => conflict.doNothing())
          .execute();
      }),
    photograph: async (sha256) => {
      const row = await queries
        .selectFrom("photographs")
        .selectAll()
        .where("sha256", "=", sha256)
        .executeTakeFirst();
      if (row === undefined) return null;
      return { sha256, widthPx: row.width_px, heightPx: row.height_px, bytes: row.bytes };
    },
    photographsOf: (key) =>
      queries
        .selectFrom("job_photographs as of")
        .innerJoin("photographs as of_all", "of_all.sha256", "of.sha256")
        .select(["of.job_key", "of.sha256", "of.name", "of.added_at", "of.added_by"])
        .select(["of_all.width_px as widthPx", "of_all.height_px as heightPx"])
        .where("of.job_key", "=", key)
        .orderBy("of.added_at")
        .orderBy("of.sha256")
        .execute(),
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
