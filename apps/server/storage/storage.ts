import type { MergeConflict } from "@copperwright/engine";
import type { BackupContents, BackupRows, Restored } from "./backupRows.ts";
import type {
  ExercisesTable,
  GuessesTable,
  JobPhotographsTable,
  JobsTable,
  PriceListsTable,
  RevisionsTable,
} from "./benchDatabase.ts";

/** Who asks, from which device, and when. */
export interface Hand {
  readonly who: string;
  readonly device: string;
  readonly at: string;
}

/** What of a job's text the list of jobs shows. */
export interface JobText {
  readonly text: string;
  readonly jobVersion: number;
  readonly name: string;
  readonly machine: string;
}

export interface RevisionDraft extends JobText {
  readonly changeId: string;
  readonly whatChanged: string;
  readonly hand: Hand;
  /** What the device says about the job: JSON text, shown and never trusted. Absent: as before. */
  readonly summary?: string | null;
}

/** A job new on this bench; it goes on from the revision its file has. */
export interface NewJobDraft extends RevisionDraft {
  readonly revision: number;
}

export interface NextRevision extends RevisionDraft {
  readonly key: string;
  /** The head this revision was made from. */
  readonly onRevision: number;
  readonly conflicts?: readonly { readonly conflict: MergeConflict; readonly theirsBy: string }[];
  readonly settles?: { readonly conflictId: string; readonly take: "mine" | "theirs" };
}

/** `known`: this change was saved before; `moved`: somebody saved in between, and nothing was done. */
export type SaveOutcome =
  | { readonly outcome: "saved" | "known"; readonly key: string; readonly revision: number }
  | { readonly outcome: "moved" };

export interface StoredConflict {
  readonly id: string;
  readonly revision: number;
  readonly conflict: MergeConflict;
  readonly mineBy: string;
  readonly theirsBy: string;
  readonly madeAt: string;
}

export interface Photograph {
  readonly sha256: string;
  readonly widthPx: number;
  readonly heightPx: number;
  readonly bytes: Uint8Array;
}

/** What a poll tells of a job. */
export type JobSeen = Pick<
  JobsTable,
  "key" | "revision" | "sequence" | "saved_at" | "saved_by" | "device"
>;

export interface PriceListDraft {
  readonly id: string;
  readonly name: string;
  /** Null: from now on without prices. */
  readonly text: string | null;
  /** The list in use when this one was put in; null: none had been. */
  readonly basedOn: string | null;
  readonly hand: Hand;
}

export type PriceListLine = Omit<PriceListsTable, "text"> & { readonly isNone: boolean };

export type RevisionLine = Omit<RevisionsTable, "text">;

/** Everything the bench keeps. A save that has answered is on the disk. */
export interface Storage {
  readonly kind: "sqlite" | "postgres";
  /** In words a person knows the place by, without a password. */
  readonly where: string;
  jobs(): Promise<readonly JobsTable[]>;
  job(key: string): Promise<JobsTable | null>;
  jobsSince(sequence: number): Promise<readonly JobSeen[]>;
  /** The newest, where no revision is named. */
  revision(key: string, revision?: number): Promise<RevisionsTable | null>;
  /** Newest first, without their texts. */
  revisions(key: string): Promise<readonly RevisionLine[]>;
  changeDone(changeId: string): Promise<{ readonly key: string; readonly revision: number } | null>;
  createJob(draft: NewJobDraft): Promise<SaveOutcome>;
  saveRevision(next: NextRevision): Promise<SaveOutcome>;
  archiveJob(key: string, isArchived: boolean): Promise<boolean>;
  /** Not yet settled, or of one revision: in the order they were found. */
  conflicts(key: string, ofRevision?: number): Promise<readonly StoredConflict[]>;
  /**
   * @param id  what the device calls it; the first photograph of a name keeps it
   */
  addPhotograph(
    key: string,
    name: string,
    photograph: Photograph,
    hand: Hand,
    id?: string,
  ): Promise<void>;
  photograph(sha256: string): Promise<Photograph | null>;
  /** The hash of what a device calls by its own id; null where nothing was sent under it. */
  photographCalled(id: string): Promise<string | null>;
  photographsOf(
    key: string,
  ): Promise<readonly (JobPhotographsTable & Omit<Photograph, "bytes" | "sha256">)[]>;
  addExercise(exercise: ExercisesTable): Promise<void>;
  exercises(): Promise<readonly ExercisesTable[]>;
  exercise(id: string): Promise<ExercisesTable | null>;
  /** When this person began on this device: now, where they had not begun. */
  startExercise(id: string, hand: Hand): Promise<string>;
  addGuess(guess: GuessesTable): Promise<void>;
  guesses(exerciseId: string): Promise<readonly GuessesTable[]>;
  /** The list in use, or a former one by its id. */
  priceList(id?: string): Promise<PriceListsTable | null>;
  /** Newest first, without their texts. */
  priceLists(): Promise<readonly PriceListLine[]>;
  /** `known`: this list was put in before; `moved`: somebody put in another meanwhile, and nothing was done. */
  putPriceList(draft: PriceListDraft): Promise<"saved" | "known" | "moved">;
  /** Small records of the server's own. */
  keep(name: string): Promise<string | null>;
  putKeep(name: string, text: string): Promise<void>;
  /** Every row but the texts of revisions and the bytes of photographs, which are fetched one by one. */
  backupRows(): Promise<BackupRows>;
  /** Adds what is missing; changes and removes nothing. */
  restoreRows(rows: BackupRows, contents: BackupContents): Promise<Restored>;
  close(): Promise<void>;
}
