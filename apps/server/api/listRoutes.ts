import { type Job, readJob } from "@copperwright/engine";
import { Hono } from "hono";
import { newKey } from "../storage/index.ts";
import { readCursor } from "./addressWords.ts";
import { type Bench, type BenchEnv, type BenchHono, handOf } from "./bench.ts";
import { atMost, JOB_BODY, readBody } from "./body.ts";
import { demoNames, demoText } from "./demos.ts";
import { listedJob, polledJob } from "./jobAnswers.ts";
import { answerRefused, type Refused, refuse, refused } from "./refuse.ts";
import { type NewJob, newJobSchema } from "./requestSchemas.ts";
import { mayEdit } from "./roles.ts";
import { sharedWhileUnderWay } from "./sharedWhileUnderWay.ts";
import { jobText, storedJob } from "./storedJob.ts";

/** The list of jobs, what was saved since, demos, new jobs. */
export function listRoutes(bench: Bench): BenchHono {
  const { storage } = bench;
  const app = new Hono<BenchEnv>();
  const jobsSince = sharedWhileUnderWay(storage.jobsSince);
  app.get("/jobs", async (c) => c.json({ jobs: (await storage.jobs()).map(listedJob) }));
  app.get("/demos", (c) => c.json({ demos: demoNames().map(demoLine) }));
  app.get("/changes", async (c) => {
    const since = readCursor(c.req.query("since"));
    if (since === null) return refuse(c, "body-misfit", { fault: "since: not a cursor" });
    const rows = await jobsSince(since);
    const cursor = rows.at(-1)?.sequence ?? since;
    return c.json({ cursor: String(cursor), jobs: rows.map(polledJob) });
  });
  app.post("/jobs", mayEdit, atMost(JOB_BODY), async (c) => {
    const read = await readBody(c, newJobSchema);
    if (!read.ok) return answerRefused(c, read);
    const made = await newJob(bench, read.body);
    if (!made.ok) return answerRefused(c, made);
    const hand = handOf(c, bench);
    const changeId = read.body.changeId ?? newKey();
    // A file goes on from its revision; a copy is another job and begins anew.
    const revision = read.body.from === "copy" ? 1 : made.job.revision;
    const draft = { ...jobText(made.job), revision, whatChanged: made.what, changeId, hand };
    const saved = await storage.createJob(draft);
    if (saved.outcome === "moved") return refuse(c, "busy", {});
    return c.json({ key: saved.key, revision: saved.revision });
  });
  return app;
}

function demoLine(name: string): { readonly name: string; readonly line: string } {
  const read = readJob(demoText(name) ?? "");
  if (!read.ok) return { name, line: "" };
  const { machine, supply, name: title } = read.job;
  const year = machine.year === undefined ? "" : `${machine.year} `;
  return { name, line: `${title}: ${year}${supply.nominalV} V, ${supply.earthPolarity} earth` };
}

async function newJob(
  { storage }: Bench,
  source: NewJob,
): Promise<{ readonly ok: true; readonly job: Job; readonly what: string } | Refused> {
  switch (source.from) {
    case "copy": {
      const row = await storage.job(source.key);
      const stored = await storedJob(storage, source.key);
      if (!stored.ok || row === null) return stored.ok ? refused("no-such-job", {}) : stored;
      return {
        ok: true,
        job: stored.job,
        what: `Copied from ${row.name}, revision ${row.revision}`,
      };
    }
    case "demo": {
      const text = demoText(source.name);
      if (text === null) return refused("no-such-demo", {});
      return jobFrom(text, `New from the demo ${source.name}`);
    }
    case "text":
      return jobFrom(source.text, "New from a file");
  }
}

function jobFrom(text: string, what: string) {
  const read = readJob(text);
  return read.ok
    ? { ok: true as const, job: read.job, what }
    : refused("job-unreadable", {}, read.refusals);
}
