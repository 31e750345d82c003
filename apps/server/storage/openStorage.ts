import { readBackupRows } from "./backupRows.ts";
import { exerciseRows } from "./exerciseRows.ts";
import { jobRows } from "./jobRows.ts";
import { migrate } from "./migrate.ts";
import { openPostgres } from "./openPostgres.ts";
import { openSqlite } from "./openSqlite.ts";
import { photographRows } from "./photographRows.ts";
import { priceRows } from "./priceRows.ts";
import { restoreRows } from "./restoreRows.ts";
import { saveRows } from "./saveRows.ts";
import { sideRows } from "./sideRows.ts";
import type { Storage } from "./storage.ts";

/** Where the bench keeps its work: a folder with the embedded database, or a PostgreSQL database. */
export type StoragePlace = { readonly folder: string } | { readonly postgresUrl: string };

/**
 * Opens the storage and brings it to this program's version.
 *
 * @throws StorageTrouble, in words for a person: it cannot be reached, the embedded database is not there for this computer, or a newer
 *   program wrote it
 */
export async function openStorage(place: StoragePlace): Promise<Storage> {
  const database =
    "folder" in place ? await openSqlite(place.folder) : await openPostgres(place.postgresUrl);
  const { kind, where, queries } = database;
  try {
    await migrate(database);
  } catch (error) {
    await queries.destroy();
    throw error;
  }
  return {
    kind,
    where,
    ...jobRows(queries),
    ...saveRows(queries),
    ...sideRows(queries),
    ...exerciseRows(queries),
    ...photographRows(queries),
    ...priceRows(queries),
    backupRows: () => readBackupRows(queries),
    restoreRows: (rows, contents) => restoreRows(queries, rows, contents),
    close: () => queries.destroy(),
  };
}
