import { type Kysely, sql } from "kysely";
import type { BenchDatabase } from "./benchDatabase.ts";

type Step = (db: Kysely<BenchDatabase>, bytesType: "blob" | "bytea") => Promise<void>;

/** Step n takes a storage of version n to version n + 1. A step that has been released is never edited: a new one follows it. */
export const MIGRATIONS: readonly Step[] = [first, priceLists, photographIds];

/** Storage version this program writes. */
export const STORAGE_VERSION = MIGRATIONS.length;

async function first(db: Kysely<BenchDatabase>, bytesType: "blob" | "bytea"): Promise<void> {
  const create = (statement: string) => sql.raw(`create table ${statement}`).execute(db);
  await create("counters (name text primary key, value integer not null)");
  await create(
    `jobs (key text primary key, name text not null, machine text not null, revision integer not null, sequence integer not null,
     saved_at text not null, saved_by text not null, device text not null, is_archived integer not null, summary text, summary_revision integer)`,
  );
  await sql.raw("create unique index jobs_by_sequence on jobs (sequence)").execute(db);
  await create(
    `revisions (job_key text not null references jobs (key), revision integer not null, text text not null, sha256 text not null,
     job_version integer not null, saved_at text not null, saved_by text not null, device text not null, what_changed text not null,
     change_id text not null unique, primary key (job_key, revision))`,
  );
  await create(
    `conflicts (id text primary key, job_key text not null, revision integer not null, place integer not null, conflict text not null,
     mine_by text not null, theirs_by text not null, made_at text not null,
     foreign key (job_key, revision) references revisions (job_key, revision))`,
  );
  await sql.raw("create index conflicts_by_job on conflicts (job_key)").execute(db);
  await create(
    `settlements (conflict_id text primary key references conflicts (id), take text not null, revision integer not null,
     settled_at text not null, settled_by text not null)`,
  );
  await create(
    `photographs (sha256 text primary key, width_px integer not null, height_px integer not null, bytes ${bytesType} not null)`,
  );
  await create(
    `job_photographs (job_key text not null references jobs (key), sha256 text not null references photographs (sha256),
     name text not null, added_at text not null, added_by text not null, primary key (job_key, sha256))`,
  );
  await createExercises(create);
  await create("keep (name text primary key, text text not null)");
  await db.insertInto("counters").values({ name: "sequence", value: 0 }).execute();
}

async function createExercises(create: (statement: string) => Promise<unknown>): Promise<void> {
  await create(
    `exercises (id text primary key, job_key text not null, revision integer not null, title text not null, request text not null,
     faults text not null, limit_minutes integer, made_at text not null, made_by text not null,
     foreign key (job_key, revision) references revisions (job_key, revision))`,
  );
  await create(
    `exercise_starts (exercise_id text not null references exercises (id), who text not null, device text not null,
     started_at text not null, primary key (exercise_id, who, device))`,
  );
  await create(
    `guesses (id text primary key, exercise_id text not null references exercises (id), who text not null, device text not null,
     guess text not null, is_right integer not null, minutes double precision not null, made_at text not null)`,
  );
}

/** Lists follow one another by the moment they were put in; the newest is in use. */
async function priceLists(db: Kysely<BenchDatabase>): Promise<void> {
  const table = `price_lists (id text primary key, name text not null, text text, saved_at text not null, saved_by text not null, device text not null)`;
  await sql.raw(`create table ${table}`).execute(db);
}

/** A device names its photograph before the server has it. */
async function photographIds(db: Kysely<BenchDatabase>): Promise<void> {
  const table =
    "photograph_ids (id text primary key, sha256 text not null references photographs (sha256))";
  await sql.raw(`create table ${table}`).execute(db);
}
