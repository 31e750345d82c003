import type {
  ConflictsTable,
  ExerciseStartsTable,
  ExercisesTable,
  GuessesTable,
  JobPhotographsTable,
  JobsTable,
  PhotographIdsTable,
  PhotographsTable,
  PriceListsTable,
  RevisionsTable,
  SettlementsTable,
} from "./benchDatabase.ts";
import type { Queries } from "./database.ts";

/** Every row of the bench's work, without long texts and bytes. The server's own small records (devices, keys) are no part of it. */
export interface BackupRows {
  readonly jobs: readonly JobsTable[];
  readonly revisions: readonly Omit<RevisionsTable, "text">[];
  readonly conflicts: readonly ConflictsTable[];
  readonly settlements: readonly SettlementsTable[];
  readonly photographs: readonly Omit<PhotographsTable, "bytes">[];
  readonly jobPhotographs: readonly JobPhotographsTable[];
  readonly exercises: readonly ExercisesTable[];
  readonly exerciseStarts: readonly ExerciseStartsTable[];
  readonly guesses: readonly GuessesTable[];
  readonly priceLists: readonly PriceListsTable[];
  readonly photographIds: readonly PhotographIdsTable[];
}

/** What rows leave out, fetched when it is wanted. */
export interface BackupContents {
  readonly text: (key: string, revision: number) => string;
  readonly photograph: (sha256: string) => Uint8Array;
}

export interface Restored {
  readonly jobsAdded: number;
  readonly revisionsAdded: number;
  readonly photographsAdded: number;
  /** Jobs that have gone another way here since the backup: theirs came back beside them, under a key of its own. */
  readonly jobsBeside: number;
}

/** Read in one transaction, so that what belongs together is there together. */
export function readBackupRows(queries: Queries): Promise<BackupRows> {
  return queries
    .transaction()
    .setIsolationLevel("repeatable read")
    .execute(async (reading) => ({
      jobs: await reading.selectFrom("jobs").selectAll().orderBy("key").execute(),
      revisions: await reading
        .selectFrom("revisions")
        .select(["job_key", "revision", "sha256", "job_version", "saved_at", "saved_by"])
        .select(["device", "what_changed", "change_id"])
        .orderBy("job_key")
        .orderBy("revision")
        .execute(),
      conflicts: await reading.selectFrom("conflicts").selectAll().orderBy("id").execute(),
      settlements: await reading
        .selectFrom("settlements")
        .selectAll()
        .orderBy("conflict_id")
        .execute(),
      photographs: await reading
        .selectFrom("photographs")
        .select(["sha256", "width_px", "height_px"])
        .orderBy("sha256")
        .execute(),
      jobPhotographs: await reading
        .selectFrom("job_photographs")
        .selectAll()
        .orderBy("job_key")
        .orderBy("sha256")
        .execute(),
      exercises: await reading.selectFrom("exercises").selectAll().orderBy("id").execute(),
      exerciseStarts: await reading.selectFrom("exercise_starts").selectAll().execute(),
      guesses: await reading.selectFrom("guesses").selectAll().orderBy("id").execute(),
      photographIds: await reading.selectFrom("photograph_ids").selectAll().orderBy("id").execute(),
      priceLists: await reading.selectFrom("price_lists").selectAll().orderBy("id").execute(),
    }));
}
