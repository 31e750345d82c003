import { Hono } from "hono";
import { readCursor, readKey } from "./addressWords.ts";
import type { Bench, BenchEnv, BenchHono } from "./bench.ts";
import { atMost, readBody, SMALL_BODY } from "./body.ts";
import { issuedText } from "./issuedText.ts";
import { openedJob, revisionLine } from "./jobAnswers.ts";
import { answerRefused, refuse } from "./refuse.ts";
import { archiveSchema } from "./requestSchemas.ts";
import { mayEdit } from "./roles.ts";

/** Looking at one job and its revisions, taking it away as a file, putting it aside. */
export function jobRoutes(bench: Bench): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  app.get("/jobs/:key", async (c) => {
    const row = await rowOf(bench, c.req.param("key"));
    return row === null ? refuse(c, "no-such-job", {}) : c.json(openedJob(row));
  });
  app.get("/jobs/:key/export", async (c) => {
    const row = await rowOf(bench, c.req.param("key"));
    const job = row === null ? null : await storage.job(row.job_key);
    if (row === null || job === null) return refuse(c, "no-such-job", {});
    return c.body(issuedText(row), 200, {
      "content-type": "application/json; charset=utf-8",
      "content-disposition": `attachment; filename="${fileName(job.name)}-${row.revision}.json"`,
      "x-content-type-options": "nosniff",
    });
  });
  app.get("/jobs/:key/revisions", async (c) => {
    const key = readKey(c.req.param("key"));
    const rows = key === null ? [] : await storage.revisions(key);
    return rows.length === 0 ? refuse(c, "no-such-job", {}) : c.json(rows.map(revisionLine));
  });
  app.get("/jobs/:key/revisions/:revision", async (c) => {
    const revision = readCursor(c.req.param("revision"));
    if ((await rowOf(bench, c.req.param("key"))) === null) return refuse(c, "no-such-job", {});
    const row = revision === null ? null : await rowOf(bench, c.req.param("key"), revision);
    const shown = revision ?? "of that name";
    return row === null
      ? refuse(c, "no-such-revision", { revision: shown })
      : c.json(openedJob(row));
  });
  app.post("/jobs/:key/archive", mayEdit, atMost(SMALL_BODY), async (c) => {
    const read = await readBody(c, archiveSchema);
    if (!read.ok) return answerRefused(c, read);
    const key = readKey(c.req.param("key"));
    const isDone = key !== null && (await storage.archiveJob(key, read.body.isArchived));
    return isDone ? c.json({ ok: true }) : refuse(c, "no-such-job", {});
  });
  return app;
}

function rowOf({ storage }: Bench, word: string, revision?: number) {
  const key = readKey(word);
  return key === null ? Promise.resolve(null) : storage.revision(key, revision);
}

/** Letters and figures of a job's name, for a file's. */
function fileName(name: string): string {
  const words = name.normalize("NFKD").replace(/[^A-Za-z0-9]+/g, "-");
  return words.replace(/^-+|-+$/g, "").slice(0, 60) || "job";
}
