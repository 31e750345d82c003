import { Hono } from "hono";
import { cleanPhotograph } from "../photograph/cleanPhotograph.ts";
import { readKey } from "./addressWords.ts";
import { base64Bytes } from "./base64Bytes.ts";
import { type Bench, type BenchEnv, type BenchHono, handOf } from "./bench.ts";
import { atMost, PHOTOGRAPH_BODY, readBody } from "./body.ts";
import { answerRefused, refuse } from "./refuse.ts";
import { photographIdSchema, photographSchema } from "./requestSchemas.ts";
import { mayEdit } from "./roles.ts";

/** Photographs: written anew on the way in, served as nothing but JPEG on the way out. */
export function photographRoutes(bench: Bench): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  app.post("/jobs/:key/photographs", mayEdit, atMost(PHOTOGRAPH_BODY), async (c) => {
    const key = readKey(c.req.param("key"));
    if (key === null || (await storage.job(key)) === null) return refuse(c, "no-such-job", {});
    const read = await readBody(c, photographSchema);
    if (!read.ok) return answerRefused(c, read);
    const { id } = read.body;
    const bytes = base64Bytes(read.body.base64);
    if (bytes === null) return refuse(c, "photograph-not-base64", {});
    const cleaned = await cleanPhotograph(bytes);
    if (!cleaned.ok) return answerRefused(c, cleaned);
    const { photograph } = cleaned;
    await storage.addPhotograph(key, read.body.name, photograph, handOf(c, bench), id);
    const { sha256, widthPx, heightPx } = photograph;
    return c.json({ id: id ?? sha256, sha256, widthPx, heightPx });
  });
  app.get("/jobs/:key/photographs", async (c) => {
    const key = readKey(c.req.param("key"));
    if (key === null || (await storage.job(key)) === null) return refuse(c, "no-such-job", {});
    const photographs = (await storage.photographsOf(key)).map((row) => ({
      id: row.sha256,
      name: row.name,
      widthPx: row.widthPx,
      heightPx: row.heightPx,
      addedAt: row.added_at,
      addedBy: row.added_by,
    }));
    return c.json({ photographs });
  });
  app.get("/photographs/:id", async (c) => {
    const id = c.req.param("id");
    const called = photographIdSchema.safeParse(id);
    const sha256 = called.success ? await storage.photographCalled(called.data) : id;
    const isHash = sha256 !== null && /^[0-9a-f]{64}$/.test(sha256);
    const photograph = isHash ? await storage.photograph(sha256) : null;
    if (photograph === null) return refuse(c, "no-such-photograph", {});
    return c.body(new Uint8Array(photograph.bytes), 200, {
      "content-type": "image/jpeg",
      "x-content-type-options": "nosniff",
      "content-security-policy": "default-src 'none'",
      // Named by what it holds, or by a name nothing else gets, so it never changes; kept by this device only.
      "cache-control": "private, max-age=31536000, immutable",
    });
  });
  return app;
}
