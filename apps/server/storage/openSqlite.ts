import { chmodSync, closeSync, mkdirSync, openSync } from "node:fs";
import { join } from "node:path";
import type SqliteDatabase from "better-sqlite3";
import { Kysely, SqliteDialect } from "kysely";
import type { BenchDatabase } from "./benchDatabase.ts";
import type { Database } from "./database.ts";
import { StorageTrouble } from "./storageTrouble.ts";

const FILE_NAME = "bench.sqlite";
/** How long a save waits for another process on the same file, ms. */
const BUSY_MS = 10_000;

/** The embedded database in a folder that only its owner can read. Every save is on the disk before it is said to be saved. */
export async function openSqlite(folder: string): Promise<Database> {
  const where = join(folder, FILE_NAME);
  const Sqlite = await loadBinding();
  let sqlite: SqliteDatabase.Database;
  try {
    mkdirSync(folder, { recursive: true, mode: 0o700 });
    // Made by us first, so that the file and the two SQLite puts beside it are never readable by others, not even at the beginning.
    closeSync(openSync(where, "a", 0o600));
    chmodSync(where, 0o600);
    sqlite = new Sqlite(where, { timeout: BUSY_MS });
    sqlite.pragma("journal_mode = WAL");
    sqlite.pragma("synchronous = FULL");
    sqlite.pragma("foreign_keys = ON");
  } catch (error) {
    const why = error instanceof Error ? error.message : String(error);
    throw new StorageTrouble(
      `The storage in ${where} cannot be opened (${why}). See that the folder can be written to and that the file is the bench's own, or name another folder.`,
    );
  }
  const queries = new Kysely<BenchDatabase>({ dialect: new SqliteDialect({ database: sqlite }) });
  return { kind: "sqlite", queries, bytesType: "blob", where };
}

async function loadBinding(): Promise<typeof SqliteDatabase> {
  try {
    const { default: Sqlite } = await import("better-sqlite3");
    // The binding itself is loaded by the first database, not by the import.
    new Sqlite(":memory:").close();
    return Sqlite;
  } catch (error) {
    const why = error instanceof Error ? error.message.split("\n")[0] : String(error);
    throw new StorageTrouble(
      `The embedded database is not there for this computer (${why}). Run "npm install" in the program's folder with network and a C++ compiler at hand, or give the connection string of a PostgreSQL database instead.`,
    );
  }
}
