import type { ExercisesTable } from "../storage/index.ts";

/** An exercise as anybody may see it: everything but the fault. */
export function listedExercise(row: ExercisesTable) {
  return {
    id: row.id,
    title: row.title,
    key: row.job_key,
    revision: row.revision,
    request: JSON.parse(row.request) as unknown,
    limitMinutes: row.limit_minutes,
    madeAt: row.made_at,
    madeBy: row.made_by,
  };
}
