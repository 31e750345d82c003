/** Tables of the bench, the same in both databases: text and whole numbers only, and one column of bytes. Times are ISO 8601 text. */
export interface BenchDatabase {
  readonly storage_version: { readonly version: number };
  readonly counters: { readonly name: string; readonly value: number };
  readonly jobs: JobsTable;
  readonly revisions: RevisionsTable;
  readonly conflicts: ConflictsTable;
  readonly settlements: SettlementsTable;
  readonly photographs: PhotographsTable;
  readonly job_photographs: JobPhotographsTable;
  readonly exercises: ExercisesTable;
  readonly exercise_starts: ExerciseStartsTable;
  readonly guesses: GuessesTable;
  readonly photograph_ids: PhotographIdsTable;
  readonly price_lists: PriceListsTable;
  readonly keep: { readonly name: string; readonly text: string };
}

/** One row a job, about its newest revision: what the list and the poll show. The only table of a job whose rows change. */
export interface JobsTable {
  readonly key: string;
  readonly name: string;
  readonly machine: string;
  readonly revision: number;
  /** From one counter of the whole database, so that a poll asks for what came after. */
  readonly sequence: number;
  readonly saved_at: string;
  readonly saved_by: string;
  readonly device: string;
  readonly is_archived: number;
  readonly summary: string | null;
  readonly summary_revision: number | null;
}

/** Rows are added and never changed or taken away. */
export interface RevisionsTable {
  readonly job_key: string;
  readonly revision: number;
  readonly text: string;
  /** SHA-256 of the text as UTF-8, hexadecimal. */
  readonly sha256: string;
  readonly job_version: number;
  readonly saved_at: string;
  readonly saved_by: string;
  readonly device: string;
  readonly what_changed: string;
  /** Given by who asked for the save; a second request with it is the same request. */
  readonly change_id: string;
}

export interface ConflictsTable {
  readonly id: string;
  readonly job_key: string;
  /** The revision that was saved with this conflict in it. */
  readonly revision: number;
  readonly place: number;
  /** A `MergeConflict` of the engine. */
  readonly conflict: string;
  readonly mine_by: string;
  readonly theirs_by: string;
  readonly made_at: string;
}

export interface SettlementsTable {
  readonly conflict_id: string;
  readonly take: string;
  readonly revision: number;
  readonly settled_at: string;
  readonly settled_by: string;
}

export interface PhotographsTable {
  /** SHA-256 of the bytes, hexadecimal: what an attachment of a job names. */
  readonly sha256: string;
  readonly width_px: number;
  readonly height_px: number;
  readonly bytes: Uint8Array;
}

export interface JobPhotographsTable {
  readonly job_key: string;
  readonly sha256: string;
  readonly name: string;
  readonly added_at: string;
  readonly added_by: string;
}

export interface ExercisesTable {
  readonly id: string;
  readonly job_key: string;
  readonly revision: number;
  readonly title: string;
  readonly request: string;
  readonly faults: string;
  readonly limit_minutes: number | null;
  readonly made_at: string;
  readonly made_by: string;
}

export interface ExerciseStartsTable {
  readonly exercise_id: string;
  readonly who: string;
  readonly device: string;
  readonly started_at: string;
}

export interface GuessesTable {
  readonly id: string;
  readonly exercise_id: string;
  readonly who: string;
  readonly device: string;
  readonly guess: string;
  readonly is_right: number;
  readonly minutes: number;
  readonly made_at: string;
}

/** Every list a shop has put in; rows are added and never changed. The latest is in use. */
export interface PriceListsTable {
  /** Given by the device that put it in, so that a list sent twice is in once. */
  readonly id: string;
  readonly name: string;
  /** CSV as it was given; null: from then on without prices. */
  readonly text: string | null;
  readonly saved_at: string;
  readonly saved_by: string;
  readonly device: string;
}

/** What a device called a photograph that it took before the server had it; a job may name it so. */
export interface PhotographIdsTable {
  readonly id: string;
  readonly sha256: string;
}
