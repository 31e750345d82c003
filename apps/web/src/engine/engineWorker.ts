import {
  applyOperation,
  type CheckedJob,
  checkedJob,
  type Job,
  readJob,
  recheckedJob,
  writeJob,
} from "@copperwright/engine";
import * as Comlink from "comlink";
import { ANSWERS } from "./answers.ts";
import type { EngineApi } from "./engineApi.ts";
import type { Held } from "./held.ts";

let held: { job: Job; checked: CheckedJob | null; last: CheckedJob | null } | null = null;

function present(): NonNullable<typeof held> {
  if (held === null) throw new Error("no job is on the bench");
  return held;
}

/** The check of the job held; what an edit left alone is taken from the check before it. */
function checkedNow(): CheckedJob {
  const now = present();
  now.checked ??= now.last === null ? checkedJob(now.job) : recheckedJob(now.last, now.job);
  now.last = now.checked;
  return now.checked;
}

function view(): Held {
  const { job } = present();
  return { job, checked: checkedNow };
}

const api: EngineApi = {
  open(text) {
    const read = readJob(text);
    if (!read.ok) return read;
    held = { job: read.job, checked: null, last: held?.last ?? null };
    return { ok: true, job: read.job, text: writeJob(read.job) };
  },
  apply(operation) {
    const now = present();
    const done = applyOperation(now.job, operation);
    if (!done.ok) return done;
    held = { job: done.job, checked: null, last: now.last };
    return { ok: true, job: done.job, inverse: done.inverse, changed: done.changed };
  },
  check: () => checkedNow().result,
  consequence(operation) {
    const now = present();
    const before = checkedNow();
    const done = applyOperation(now.job, operation);
    if (!done.ok) return done;
    const { result } = recheckedJob(before, done.job);
    return {
      ok: true,
      before: before.result.counts,
      after: result.counts,
      verdict: result.verdict,
    };
  },
  text: () => writeJob(present().job),
  answer(name, question, progress) {
    const answer = ANSWERS[name] as (held: Held, question: unknown, progress: unknown) => unknown;
    return answer(view(), question, progress);
  },
};

Comlink.expose(api);
