import { spawn, spawnSync } from "node:child_process";
import { chownSync, existsSync, mkdtempSync, readdirSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import pg from "pg";

const DEBIAN = "/usr/lib/postgresql";

/** Folder of PostgreSQL's own programs, newest version; Debian keeps them off the search path. */
function programFolder(): string {
  const versions = existsSync(DEBIAN) ? readdirSync(DEBIAN) : [];
  const newest = versions
    .map((name) => ({ name, major: Number(name) }))
    .filter(({ name }) => existsSync(join(DEBIAN, name, "bin/initdb")))
    .sort((a, b) => b.major - a.major)[0];
  if (newest === undefined) {
    throw new Error("PostgreSQL is missing: apt-get install postgresql (npm test does it)");
  }
  return join(DEBIAN, newest.name, "bin");
}

/** The server refuses to run as root; then it runs as the user its Debian package made. */
function serverUser(): { readonly uid?: number; readonly gid?: number } {
  if (process.getuid?.() !== 0) return {};
  const id = (flag: string) => Number(spawnSync("id", [flag, "postgres"]).stdout.toString());
  return { uid: id("-u"), gid: id("-g") };
}

export interface PostgresForTests {
  /** A new, empty database. */
  readonly freshUrl: () => Promise<string>;
  /** Ends every process of the server at once, as a power cut would, and starts it again. */
  readonly crash: () => Promise<void>;
  readonly stop: () => void;
}

/** A real server of our own on a socket in a folder of its own, with everything that makes a save lasting left on. */
export async function startPostgres(): Promise<PostgresForTests> {
  const programs = programFolder();
  const user = serverUser();
  const folder = mkdtempSync(join(tmpdir(), "bench-pg-"));
  if (user.uid !== undefined) chownSync(folder, user.uid, user.gid!);
  const data = join(folder, "data");
  const words = ["-D", data, "-U", "bench", "-A", "trust", "-E", "UTF8", "--locale=C", "-N"];
  const made = spawnSync(join(programs, "initdb"), words, { ...user, cwd: folder });
  if (made.status !== 0) throw new Error(`initdb: ${made.stderr}`);

  const url = (database: string) => `postgresql:///${database}?host=${folder}&user=bench`;
  const start = async () => {
    const options = [
      "-D",
      data,
      "-k",
      folder,
      "-c",
      "listen_addresses=",
      "-c",
      "max_connections=60",
    ];
    const server = spawn(join(programs, "postgres"), options, {
      ...user,
      cwd: folder,
      stdio: "ignore",
      // A group of its own, so that it can be ended with all its children and nothing else.
      detached: true,
    });
    await answering(url("postgres"));
    return server;
  };
  let server = await start();
  const endAll = () => {
    try {
      process.kill(-server.pid!, "SIGKILL");
    } catch {
      // It had ended by itself.
    }
  };
  // A run of tests that is broken off leaves no server behind.
  process.once("exit", endAll);
  let databaseCount = 0;
  return {
    freshUrl: async () => {
      const name = `bench${++databaseCount}`;
      await query(url("postgres"), `create database ${name}`);
      return url(name);
    },
    crash: async () => {
      const isOver = new Promise((resolve) => server.once("exit", resolve));
      endAll();
      await isOver;
      rmSync(join(data, "postmaster.pid"), { force: true });
      server = await start();
    },
    stop: () => {
      process.off("exit", endAll);
      endAll();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

async function query(url: string, text: string): Promise<void> {
  const client = new pg.Client({ connectionString: url });
  client.on("error", () => {});
  await client.connect();
  try {
    await client.query(text);
  } finally {
    await client.end();
  }
}

async function answering(url: string): Promise<void> {
  for (let i = 0; i < 600; i++) {
    try {
      return await query(url, "select 1");
    } catch {
      await new Promise((resolve) => setTimeout(resolve, 50));
    }
  }
  throw new Error("PostgreSQL did not start within 30 s");
}
