import { Hono } from "hono";
import { newKey } from "../storage/index.ts";
import { readKey } from "./addressWords.ts";
import { type Bench, type BenchEnv, type BenchHono, handOf } from "./bench.ts";
import { atMost, JOB_BODY, readBody, SMALL_BODY } from "./body.ts";
import type { InTurn } from "./oneAtATime.ts";
import { answerRefused, refuse } from "./refuse.ts";
import { changeSchema, restoreSchema } from "./requestSchemas.ts";
import { mayEdit } from "./roles.ts";
import { saveChange } from "./saveChange.ts";
import { savedAnswer } from "./savedAnswer.ts";
import { saveOnHead } from "./saveOnHead.ts";
import { storedJob } from "./storedJob.ts";

/** Saving changes, and putting an older revision in use again. Each makes a revision; none is ever changed. */
export function changeRoutes(bench: Bench, inTurn: InTurn): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  app.post("/jobs/:key/changes", mayEdit, atMost(JOB_BODY), async (c) => {
    const key = readKey(c.req.param("key"));
    if (key === null) return refuse(c, "no-such-job", {});
    const read = await readBody(c, changeSchema);
    if (!read.ok) return answerRefused(c, read);
    const hand = handOf(c, bench);
    const saved = await inTurn(key, () => saveChange(storage, key, read.body, hand));
    return savedAnswer(c, storage, key, saved);
  });
  app.post("/jobs/:key/restore", mayEdit, atMost(SMALL_BODY), async (c) => {
    const key = readKey(c.req.param("key"));
    if (key === null) return refuse(c, "no-such-job", {});
    const read = await readBody(c, restoreSchema);
    if (!read.ok) return answerRefused(c, read);
    const { revision, changeId = newKey() } = read.body;
    const stored = await storedJob(storage, key, revision);
    if (!stored.ok) return answerRefused(c, stored);
    const words = {
      changeId,
      whatChanged: `Restored revision ${revision}`,
      hand: handOf(c, bench),
    };
    const saved = await inTurn(key, () => saveOnHead(storage, key, words, () => stored));
    return savedAnswer(c, storage, key, saved);
  });
  return app;
}
