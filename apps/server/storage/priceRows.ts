import type { PriceListsTable } from "./benchDatabase.ts";
import type { Queries, Writing } from "./database.ts";
import { nextSequence } from "./jobRows.ts";
import type { Storage } from "./storage.ts";

/** The shop's price lists, the one in use first. */
export function priceRows(
  queries: Queries,
): Pick<Storage, "priceList" | "priceLists" | "putPriceList"> {
  return {
    priceList: async (id) => {
      const all = newestFirst(queries).selectAll().limit(1);
      return (await (id === undefined ? all : all.where("id", "=", id)).executeTakeFirst()) ?? null;
    },
    priceLists: async () => {
      const lines = await newestFirst(queries)
        .select(["id", "name", "saved_at", "saved_by", "device"])
        .select((row) => row("text", "is", null).as("is_none"))
        .execute();
      return lines.map(({ is_none, ...line }) => ({ ...line, isNone: Boolean(is_none) }));
    },
    putPriceList: ({ id, name, text, basedOn, hand }) =>
      queries.transaction().execute(async (writing) => {
        // Whoever else puts one in waits here.
        await nextSequence(writing);
        const head =
          (await newestFirst(writing).select(["id", "saved_at"]).executeTakeFirst()) ?? null;
        const known = await writing
          .selectFrom("price_lists")
          .select("id")
          .where("id", "=", id)
          .executeTakeFirst();
        if (known !== undefined) return "known";
        if ((head?.id ?? null) !== basedOn) return "moved";
        const row = { id, name, text, saved_by: hand.who, device: hand.device };
        const saved_at = after(head?.saved_at ?? "", hand.at);
        await writing
          .insertInto("price_lists")
          .values({ ...row, saved_at })
          .execute();
        return "saved";
      }),
  };
}

const newestFirst = (from: Queries | Writing) =>
  from.selectFrom("price_lists").orderBy("saved_at", "desc").orderBy("id", "desc");

/** The order of lists is that of their moments, so a clock that was set back must not put a new list behind the old. */
function after(before: string, at: PriceListsTable["saved_at"]): string {
  return at > before ? at : new Date(Date.parse(before) + 1).toISOString();
}
