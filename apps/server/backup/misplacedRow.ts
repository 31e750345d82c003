import type { BackupRows } from "../storage/index.ts";

/** What in a backup hangs on nothing, in words; null where everything has its place. */
export function misplacedRow(rows: BackupRows): string | null {
  const heads = new Map(rows.jobs.map(({ key, revision }) => [key, revision]));
  if (heads.size !== rows.jobs.length) return "a job is in it twice";
  const seen = new Map<string, number>();
  for (const { job_key, revision } of rows.revisions) {
    const before = seen.get(job_key);
    // The first is whatever revision the job came with.
    if (before !== undefined && revision !== before + 1)
      return "revisions of a job do not follow on";
    seen.set(job_key, revision);
  }
  for (const [key, head] of heads) {
    if (seen.get(key) !== head) return "the newest revision of a job is missing";
  }
  if (seen.size !== heads.size) return "a revision belongs to no job";
  return misplacedOnJob(rows, heads) ?? misplacedOnExercise(rows, heads);
}

type Heads = ReadonlyMap<string, number>;

const isAt = (heads: Heads, row: { readonly job_key: string; readonly revision: number }) =>
  row.revision <= (heads.get(row.job_key) ?? 0);

function misplacedOnJob(rows: BackupRows, heads: Heads): string | null {
  const conflicts = new Set(rows.conflicts.map(({ id }) => id));
  const pictures = new Set(rows.photographs.map(({ sha256 }) => sha256));
  if (!rows.conflicts.every((row) => isAt(heads, row))) return "a conflict belongs to no revision";
  if (!rows.settlements.every((row) => conflicts.has(row.conflict_id))) {
    return "a settlement belongs to no conflict";
  }
  const hasPlace = (row: { readonly job_key: string; readonly sha256: string }) =>
    heads.has(row.job_key) && pictures.has(row.sha256);
  if (!rows.photographIds.every(({ sha256 }) => pictures.has(sha256)))
    return "a name belongs to no photograph";
  return rows.jobPhotographs.every(hasPlace) ? null : "a photograph belongs to no job";
}

function misplacedOnExercise(rows: BackupRows, heads: Heads): string | null {
  const exercises = new Set(rows.exercises.map(({ id }) => id));
  if (!rows.exercises.every((row) => isAt(heads, row))) return "an exercise belongs to no revision";
  const hunted = [...rows.exerciseStarts, ...rows.guesses];
  return hunted.every((row) => exercises.has(row.exercise_id))
    ? null
    : "a guess belongs to no exercise";
}
