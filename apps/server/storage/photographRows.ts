import type { Queries } from "./database.ts";
import type { Storage } from "./storage.ts";

/** Photographs, each kept once whatever jobs it hangs on, and what devices call them. */
export function photographRows(
  queries: Queries,
): Pick<Storage, "addPhotograph" | "photograph" | "photographCalled" | "photographsOf"> {
  return {
    addPhotograph: (key, name, { sha256, widthPx, heightPx, bytes }, hand, id) =>
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
        if (id === undefined) return;
        await writing
          .insertInto("photograph_ids")
          .values({ id, sha256 })
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
    photographCalled: async (id) => {
      const row = await queries
        .selectFrom("photograph_ids")
        .select("sha256")
        .where("id", "=", id)
        .executeTakeFirst();
      return row?.sha256 ?? null;
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
  };
}
