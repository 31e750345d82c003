import { readKey } from "../api/addressWords.ts";
import { type Bench, type BenchContext, handOf } from "../api/bench.ts";
import { readBody } from "../api/body.ts";
import { answerRefused, refuse } from "../api/refuse.ts";
import { storedJob } from "../api/storedJob.ts";
import { newKey } from "../storage/index.ts";
import { exerciseMachine, triedMachine } from "./exerciseMachine.ts";
import { standingOf } from "./exerciseReading.ts";
import { newExerciseSchema } from "./exerciseSchemas.ts";

/** The fault is tried on the machine before it is kept, so that every exercise can be read. */
export async function makeExercise(bench: Bench, c: BenchContext): Promise<Response> {
  const { storage } = bench;
  const key = readKey(c.req.param("key") ?? "");
  const read = await readBody(c, newExerciseSchema);
  if (!read.ok) return answerRefused(c, read);
  const row = key === null ? null : await storage.revision(key);
  if (key === null || row === null) return refuse(c, "no-such-job", {});
  const stored = await storedJob(storage, key, row.revision);
  if (!stored.ok) return answerRefused(c, stored);
  const { title, faults, limitMinutes } = read.body;
  const { battery, aged, ...standing } = read.body.request;
  const request = {
    ...standingOf(standing),
    ...(battery === undefined ? {} : { battery }),
    ...(aged === undefined ? {} : { aged }),
  };
  const machine = exerciseMachine(stored.job, request, faults);
  const tried = triedMachine(machine);
  if (tried !== null) {
    return answerRefused(c, { ok: false, code: "exercise-misfit", words: {}, refusals: tried });
  }
  const hand = handOf(c, bench);
  const id = newKey();
  await storage.addExercise({
    id,
    job_key: key,
    revision: row.revision,
    title,
    request: JSON.stringify(request),
    faults: JSON.stringify(faults),
    limit_minutes: limitMinutes ?? null,
    made_at: hand.at,
    made_by: hand.who,
  });
  return c.json({ id });
}
