import { sql } from "kysely";
import type { Database, Writing } from "./database.ts";
import { MIGRATIONS, STORAGE_VERSION } from "./migrations.ts";
import { StorageTrouble } from "./storageTrouble.ts";

/** Any number that other programs on the same database are unlikely to lock. */
const MIGRATION_LOCK = 720_531_954;

/** Brings the storage to this program's version, one version at a time, all or nothing. A newer one is left as it is and refused. */
export async function migrate(database: Database): Promise<void> {
  await database.queries.transaction().execute(async (writing) => {
    // Two servers may start on one database at once; the second waits here and then finds the work done.
    if (database.kind === "postgres") {
      await sql`select pg_advisory_xact_lock(${MIGRATION_LOCK})`.execute(writing);
    }
    await sql`create table if not exists storage_version (version integer not null)`.execute(
      writing,
    );
    const version = await versionIn(writing);
    if (version > STORAGE_VERSION) throw new StorageTrouble(newerStorage(database.where, version));
    for (const step of MIGRATIONS.slice(version)) await step(writing, database.bytesType);
    if (version < STORAGE_VERSION) {
      await writing.deleteFrom("storage_version").execute();
      await writing.insertInto("storage_version").values({ version: STORAGE_VERSION }).execute();
    }
  });
}

async function versionIn(writing: Writing): Promise<number> {
  const row = await writing.selectFrom("storage_version").select("version").executeTakeFirst();
  return row?.version ?? 0;
}

function newerStorage(where: string, version: number): string {
  return (
    `The storage in ${where} was written by a newer program (storage version ${version}; this program knows ${STORAGE_VERSION}). ` +
    "Nothing was changed. Start the newer program, or give this one another folder and restore a backup it made itself."
  );
}
