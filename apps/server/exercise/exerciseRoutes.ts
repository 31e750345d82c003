import { Hono } from "hono";
import { readKey } from "../api/addressWords.ts";
import {
  type Bench,
  type BenchContext,
  type BenchEnv,
  type BenchHono,
  handOf,
} from "../api/bench.ts";
import { atMost, readBody, SMALL_BODY } from "../api/body.ts";
import { answerRefused, refuse } from "../api/refuse.ts";
import { mayEdit, ownerOnly } from "../api/roles.ts";
import { newKey } from "../storage/index.ts";
import { exerciseReading } from "./exerciseReading.ts";
import { exerciseReadSchema, guessSchema } from "./exerciseSchemas.ts";
import { judgeGuess } from "./judgeGuess.ts";
import { listedExercise } from "./listedExercise.ts";
import { machineStore } from "./machineStore.ts";
import { makeExercise } from "./makeExercise.ts";
import { minutesSince } from "./minutesSince.ts";

/** Hidden faults: set by who may edit, hunted by anybody, solved in the server, so that no page ever holds the fault it hunts. */
export function exerciseRoutes(bench: Bench): BenchHono {
  const { storage, clock } = bench;
  const app = new Hono<BenchEnv>();
  const machineOf = machineStore(storage);
  app.post("/jobs/:key/exercises", mayEdit, atMost(SMALL_BODY), (c) => makeExercise(bench, c));
  app.get("/exercises", async (c) =>
    c.json({ exercises: (await storage.exercises()).map(listedExercise) }),
  );
  app.post("/exercises/:id/read", atMost(SMALL_BODY), async (c) => {
    const read = await readBody(c, exerciseReadSchema);
    if (!read.ok) return answerRefused(c, read);
    const machine = await machineOf(readKey(c.req.param("id")));
    if (!machine.ok) return answerRefused(c, machine);
    const answered = exerciseReading(machine, read.body);
    if (!answered.ok) {
      return answerRefused(c, {
        ok: false,
        code: "reading-refused",
        words: {},
        refusals: answered.refusals,
      });
    }
    const startedAt = await storage.startExercise(c.req.param("id"), handOf(c, bench));
    return c.json({ ...answered.answer, minutes: minutesSince(startedAt, clock()) });
  });
  app.post("/exercises/:id/guess", atMost(SMALL_BODY), async (c) => {
    const read = await readBody(c, guessSchema);
    if (!read.ok) return answerRefused(c, read);
    const id = c.req.param("id");
    const machine = await machineOf(readKey(id));
    if (!machine.ok) return answerRefused(c, machine);
    const hand = handOf(c, bench);
    const judged = judgeGuess(machine.job, machine.faults, read.body);
    const minutes = minutesSince(await storage.startExercise(id, hand), clock());
    await storage.addGuess({
      id: newKey(),
      exercise_id: id,
      who: hand.who,
      device: hand.device,
      guess: JSON.stringify(read.body),
      is_right: judged.isRight ? 1 : 0,
      minutes,
      made_at: hand.at,
    });
    return c.json({ ...judged, minutes });
  });
  app.get("/exercises/:id/answer", ownerOnly, (c) => fullAnswer(bench, c));
  return app;
}

/** The fault and every guess, for the owner. */
async function fullAnswer({ storage }: Bench, c: BenchContext): Promise<Response> {
  const id = readKey(c.req.param("id") ?? "");
  const exercise = id === null ? null : await storage.exercise(id);
  if (id === null || exercise === null) return refuse(c, "no-such-exercise", {});
  const guesses = (await storage.guesses(id)).map((row) => ({
    who: row.who,
    device: row.device,
    guess: JSON.parse(row.guess) as unknown,
    isRight: row.is_right === 1,
    minutes: row.minutes,
    madeAt: row.made_at,
  }));
  return c.json({ ...listedExercise(exercise), faults: JSON.parse(exercise.faults), guesses });
}
