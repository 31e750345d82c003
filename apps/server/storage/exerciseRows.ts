import type { Queries } from "./database.ts";
import type { Storage } from "./storage.ts";

/** Hidden faults, who began to hunt them when, and what they guessed. */
export function exerciseRows(
  queries: Queries,
): Pick<
  Storage,
  "addExercise" | "exercises" | "exercise" | "startExercise" | "addGuess" | "guesses"
> {
  return {
    addExercise: async (exercise) => {
      await queries.insertInto("exercises").values(exercise).execute();
    },
    exercises: () =>
      queries.selectFrom("exercises").selectAll().orderBy("made_at").orderBy("id").execute(),
    exercise: async (id) =>
      (await queries.selectFrom("exercises").selectAll().where("id", "=", id).executeTakeFirst()) ??
      null,
    startExercise: async (id, { who, device, at }) => {
      await queries
        .insertInto("exercise_starts")
        .values({ exercise_id: id, who, device, started_at: at })
        .onConflict((conflict) => conflict.doNothing())
        .execute();
      const row = await queries
        .selectFrom("exercise_starts")
        .select("started_at")
        .where("exercise_id", "=", id)
        .where("who", "=", who)
        .where("device", "=", device)
        .executeTakeFirstOrThrow();
      return row.started_at;
    },
    addGuess: async (guess) => {
      await queries.insertInto("guesses").values(guess).execute();
    },
    guesses: (exerciseId) =>
      queries
        .selectFrom("guesses")
        .selectAll()
        .where("exercise_id", "=", exerciseId)
        .orderBy("made_at")
        .orderBy("id")
        .execute(),
  };
}
