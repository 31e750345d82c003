import { CompiledQuery, Kysely, PostgresDialect } from "kysely";
import pg from "pg";
import type { BenchDatabase } from "./benchDatabase.ts";
import type { Database } from "./database.ts";
import { StorageTrouble } from "./storageTrouble.ts";

const CONNECTIONS_COUNT = 8;
const CONNECT_MS = 10_000;

/** A PostgreSQL database by its connection string. A connection that breaks is replaced; what was being saved on it is refused. */
export async function openPostgres(postgresUrl: string): Promise<Database> {
  const pool = new pg.Pool({
    connectionString: postgresUrl,
    max: CONNECTIONS_COUNT,
    connectionTimeoutMillis: CONNECT_MS,
  });
  // A server that goes away while a connection idles would otherwise end this process.
  pool.on("error", () => {});
  // So would one that goes while a save holds the connection between two statements; the save itself is refused by its next statement.
  pool.on("connect", (client) => client.on("error", () => {}));
  try {
    (await pool.connect()).release();
  } catch (error) {
    await pool.end();
    const why = error instanceof Error ? error.message : String(error);
    throw new StorageTrouble(
      `The PostgreSQL database cannot be reached (${why}). See that it runs, that the connection string names it rightly, and that its user may log in.`,
    );
  }
  const dialect = new PostgresDialect({
    pool,
    // A save is not said to be saved before it is on the disk, however the database as a whole is set up.
    onCreateConnection: async (connection) => {
      await connection.executeQuery(CompiledQuery.raw("set synchronous_commit to on"));
    },
  });
  const queries = new Kysely<BenchDatabase>({ dialect });
  return { kind: "postgres", queries, bytesType: "bytea", where: "the PostgreSQL database" };
}
