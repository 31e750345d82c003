import { readStockList } from "@copperwright/engine";
import { Hono } from "hono";
import type { Bench, BenchContext, BenchEnv, BenchHono } from "../api/bench.ts";
import { handOf } from "../api/bench.ts";
import { atMost, PRICE_LIST_BODY, readBody } from "../api/body.ts";
import { answerRefused, refuse, refused } from "../api/refuse.ts";
import { changeIdSchema, priceListSchema } from "../api/requestSchemas.ts";
import { maySeePrices } from "../api/roles.ts";
import type { PriceListsTable } from "../storage/index.ts";

/** The shop's price list: one in use for every device that may edit, every former one kept with who put it in and when. */
export function priceRoutes(bench: Bench): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  app.get("/prices", maySeePrices, async (c) => {
    const list = await storage.priceList();
    const known = c.req.query("known");
    // A device that has it already is spared the text.
    if (list !== null && known === list.id)
      return c.json({ list: { ...about(list), isKnown: true } });
    return c.json({ list: list && whole(list) });
  });
  app.get("/prices/lists", maySeePrices, async (c) => {
    const lists = (await storage.priceLists()).map((line) => ({
      ...about(line),
      isNone: line.isNone,
    }));
    return c.json({ lists });
  });
  app.get("/prices/lists/:id", maySeePrices, async (c) => {
    const id = changeIdSchema.safeParse(c.req.param("id"));
    const list = id.success ? await storage.priceList(id.data) : null;
    return list === null ? refuse(c, "no-such-price-list", {}) : c.json({ list: whole(list) });
  });
  app.post("/prices", maySeePrices, atMost(PRICE_LIST_BODY), (c) => putIn(bench, c));
  return app;
}

async function putIn(bench: Bench, c: BenchContext): Promise<Response> {
  const read = await readBody(c, priceListSchema);
  if (!read.ok) return answerRefused(c, read);
  const { text } = read.body;
  const list = text === null ? null : readStockList(text);
  if (list?.ok === false)
    return answerRefused(c, refused("price-list-unreadable", {}, list.refusals));
  const outcome = await bench.storage.putPriceList({ ...read.body, hand: handOf(c, bench) });
  if (outcome === "moved") return refuse(c, "price-list-moved", {});
  const inUse = await bench.storage.priceList();
  return c.json({ list: inUse && about(inUse) });
}

type About = Pick<PriceListsTable, "id" | "name" | "saved_at" | "saved_by" | "device">;

const about = ({ id, name, saved_at, saved_by, device }: About) => ({
  id,
  name,
  savedAt: saved_at,
  savedBy: saved_by,
  device,
});

const whole = (list: PriceListsTable) => ({ ...about(list), isKnown: false, text: list.text });
