import { applyOperation, type Job, settleOperation } from "@copperwright/engine";
import { Hono } from "hono";
import { newKey } from "../storage/index.ts";
import { readKey } from "./addressWords.ts";
import { type Bench, type BenchEnv, type BenchHono, handOf } from "./bench.ts";
import { atMost, readBody, SMALL_BODY } from "./body.ts";
import { conflictAnswer } from "./jobAnswers.ts";
import type { InTurn } from "./oneAtATime.ts";
import { answerRefused, refuse, refused } from "./refuse.ts";
import { settleSchema } from "./requestSchemas.ts";
import { mayEdit } from "./roles.ts";
import { savedAnswer } from "./savedAnswer.ts";
import { type Made, saveOnHead } from "./saveOnHead.ts";

/** What two people changed so that it cannot both stand: looking at it, and settling it, which is a save like any other. */
export function conflictRoutes(bench: Bench, inTurn: InTurn): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  app.get("/jobs/:key/conflicts", async (c) => {
    const key = readKey(c.req.param("key"));
    if (key === null || (await storage.job(key)) === null) return refuse(c, "no-such-job", {});
    return c.json({ conflicts: (await storage.conflicts(key)).map(conflictAnswer) });
  });
  app.post("/jobs/:key/conflicts/:id/settle", mayEdit, atMost(SMALL_BODY), async (c) => {
    const [key, id] = [readKey(c.req.param("key")), readKey(c.req.param("id"))];
    if (key === null || id === null) return refuse(c, "no-such-conflict", {});
    const read = await readBody(c, settleSchema);
    if (!read.ok) return answerRefused(c, read);
    const { take, changeId = newKey() } = read.body;
    const words = { changeId, whatChanged: `Settled a conflict: ${take}`, hand: handOf(c, bench) };
    const saved = await inTurn(key, () =>
      saveOnHead(storage, key, words, (head) => settledJob(bench, key, id, take, head.job)),
    );
    return savedAnswer(c, storage, key, saved);
  });
  return app;
}

/** The version in use stays as it is now, whatever has become of it since; the other is put in by an operation like any other. */
async function settledJob(
  { storage }: Bench,
  key: string,
  id: string,
  take: "mine" | "theirs",
  job: Job,
): Promise<Made> {
  const stored = (await storage.conflicts(key)).find((one) => one.id === id);
  if (stored === undefined) return refused("no-such-conflict", {});
  const settles = { conflictId: id, take };
  if (stored.conflict.inUse === take) return { ok: true, job, settles };
  const operation = settleOperation(job, stored.conflict, take);
  if (operation === null) return refused("settle-gone", {});
  const done = applyOperation(job, operation);
  return done.ok
    ? { ok: true, job: done.job, settles }
    : refused("settle-refused", {}, done.refusals);
}
