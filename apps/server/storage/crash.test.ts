import { type ChildProcess, spawn } from "node:child_process";
import { mkdirSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { build } from "esbuild";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { openStorage, type Storage, type StoragePlace, sha256Of } from "./index.ts";
import { startPostgres } from "./postgresForTests.fixture.ts";

const KILLS = 100;
const SERVER_KILLS = 10;
/** Savers at a time: they also get into each other's way, as several servers on one database do. */
const AT_ONCE = 4;
/** A saver is killed between its first save and this long after, ms. */
const LONGEST_MS = 40;
const LONGEST_TEST_MS = 300_000;

/** Where Node finds the packages from; taken away at the end. */
const built = join(process.cwd(), "node_modules", `.crash-${process.pid}-${Date.now()}`);
const program = join(built, "saveUntilKilled.mjs");

beforeAll(async () => {
  mkdirSync(built, { recursive: true });
  await build({
    entryPoints: [join(import.meta.dirname, "saveUntilKilled.fixture.ts")],
    outfile: program,
    bundle: true,
    platform: "node",
    format: "esm",
    external: ["better-sqlite3", "pg-native"],
    banner: {
      js: "import { createRequire as __createRequire } from 'node:module'; const require = __createRequire(import.meta.url);",
    },
    logLevel: "error",
  });
}, 60_000);
afterAll(() => rmSync(built, { recursive: true, force: true }));

interface Acknowledged {
  readonly changeId: string;
  readonly revision: number;
  readonly sha256: string;
}

const hand = { who: "test", device: "test", at: "2026-03-01T00:00:00Z" };
const draft = { text: "first", jobVersion: 1, name: "n", machine: "m", whatChanged: "w", hand };

async function newJob(storage: Storage): Promise<string> {
  const made = await storage.createJob({ ...draft, revision: 1, changeId: "first-change" });
  if (made.outcome !== "saved") throw new Error("no job");
  return made.key;
}

/** One saver from its start to its death, and what it was told is saved. */
async function runUntilKilled(
  place: StoragePlace,
  key: string,
  name: string,
): Promise<readonly Acknowledged[]> {
  const saver: ChildProcess = spawn(process.execPath, [program, JSON.stringify(place), key, name], {
    stdio: ["ignore", "pipe", "pipe"],
  });
  let said = "";
  let trouble = "";
  let isDoomed = false;
  saver.stderr!.on("data", (bytes) => {
    trouble += bytes;
  });
  saver.stdout!.on("data", (bytes) => {
    said += bytes;
    if (isDoomed) return;
    isDoomed = true;
    setTimeout(() => saver.kill("SIGKILL"), Math.random() * LONGEST_MS);
  });
  const signal = await new Promise((resolve) => saver.once("close", (_, by) => resolve(by)));
  if (signal !== "SIGKILL") throw new Error(`a saver ended by itself: ${trouble}`);
  // A line cut short was being written, and was not told to anybody.
  const lines = said.slice(0, said.lastIndexOf("\n") + 1).split("\n");
  return lines.filter(Boolean).map((line) => {
    const [changeId, revision, sha256] = line.split(" ") as [string, string, string];
    return { changeId, revision: Number(revision), sha256 };
  });
}

async function killSavers(place: StoragePlace, key: string): Promise<readonly Acknowledged[]> {
  const acknowledged: Acknowledged[] = [];
  let started = 0;
  const line = async () => {
    while (started < KILLS) {
      const name = `saver-${started++}`;
      for (const one of await runUntilKilled(place, key, name)) acknowledged.push(one);
    }
  };
  await Promise.all(Array.from({ length: AT_ONCE }, line));
  return acknowledged;
}

/** Everything acknowledged is there as it was; every revision is whole, with all that was saved with it; none is missing in between. */
async function expectWhole(
  storage: Storage,
  key: string,
  acknowledged: readonly Acknowledged[],
  conflictsEach: number,
): Promise<void> {
  const rows = await storage.revisions(key);
  expect(rows.map(({ revision }) => revision)).toEqual(rows.map((_, i) => rows.length - i));
  expect((await storage.job(key))?.revision).toBe(rows.length);
  expect((await storage.job(key))?.name).toBe(rows[0]!.change_id);
  const byChange = new Map(rows.map((row) => [row.change_id, row]));
  for (const { changeId, revision, sha256 } of acknowledged) {
    const row = byChange.get(changeId);
    expect([row?.revision, row?.sha256], changeId).toEqual([revision, sha256]);
  }
  for (const { revision, sha256 } of rows) {
    const row = await storage.revision(key, revision);
    expect(sha256Of(row!.text), `revision ${revision}`).toBe(sha256);
  }
  const conflicts = await storage.conflicts(key);
  expect(conflicts).toHaveLength((rows.length - 1) * conflictsEach);
}

/** A change nobody heard the end of is sent again, and is then there once. */
async function expectResendsOnce(
  storage: Storage,
  key: string,
  acknowledged: readonly Acknowledged[],
): Promise<void> {
  for (let k = 0; k < KILLS; k++) {
    const count = acknowledged.filter(({ changeId }) => changeId.startsWith(`saver-${k}-`)).length;
    const changeId = `saver-${k}-${count}`;
    const head = (await storage.job(key))!.revision;
    const sent = await storage.saveRevision({ ...draft, key, changeId, onRevision: head });
    expect(["saved", "known"]).toContain(sent.outcome);
  }
  const rows = await storage.revisions(key);
  expect(new Set(rows.map((row) => row.change_id)).size).toBe(rows.length);
}

describe("killed in the middle of saves", () => {
  test(`embedded database: ${KILLS} savers killed, nothing acknowledged is lost, nothing is torn`, {
    timeout: LONGEST_TEST_MS,
  }, async () => {
    const folder = mkdtempSync(join(tmpdir(), "bench-crash-"));
    try {
      const storage = await openStorage({ folder });
      const key = await newJob(storage);
      await storage.close();
      const acknowledged = await killSavers({ folder }, key);
      expect(acknowledged.length).toBeGreaterThanOrEqual(KILLS);
      const after = await openStorage({ folder });
      await expectWhole(after, key, acknowledged, 1);
      await expectResendsOnce(after, key, acknowledged);
      await after.close();
    } finally {
      rmSync(folder, { recursive: true, force: true });
    }
  });

  test(`PostgreSQL: ${KILLS} savers and ${SERVER_KILLS} times the server killed`, {
    timeout: LONGEST_TEST_MS,
  }, async () => {
    const postgres = await startPostgres();
    try {
      const place = { postgresUrl: await postgres.freshUrl() };
      const storage = await openStorage(place);
      const key = await newJob(storage);
      const acknowledged = await killSavers(place, key);
      expect(acknowledged.length).toBeGreaterThanOrEqual(KILLS);
      await expectWhole(storage, key, acknowledged, 1);
      await expectResendsOnce(storage, key, acknowledged);
      await storage.close();

      const other = { postgresUrl: await postgres.freshUrl() };
      const surviving = await openStorage(other);
      const job = await newJob(surviving);
      const kept = await saveThroughCrashes(surviving, job, postgres.crash);
      expect(kept.length).toBeGreaterThanOrEqual(SERVER_KILLS);
      await expectWhole(surviving, job, kept, 0);
      await surviving.close();
    } finally {
      postgres.stop();
    }
  });
});

/** Two savers go on and on while the server under them is killed and started; what is refused in between is simply sent again. */
async function saveThroughCrashes(
  storage: Storage,
  key: string,
  crash: () => Promise<void>,
): Promise<readonly Acknowledged[]> {
  const acknowledged: Acknowledged[] = [];
  const refused: unknown[] = [];
  let isOver = false;
  const saver = async (name: string) => {
    for (let n = 0; !isOver; ) {
      const changeId = `${name}-${String(n).padStart(6, "0")}`;
      const text = `${changeId} ${"y".repeat(20_000)}`;
      try {
        const onRevision = (await storage.job(key))!.revision;
        const next = { ...draft, key, text, name: changeId, changeId, onRevision };
        const saved = await storage.saveRevision(next);
        if (saved.outcome === "moved") continue;
        acknowledged.push({ changeId, revision: saved.revision, sha256: sha256Of(text) });
        n++;
      } catch (error) {
        refused.push(error);
        await new Promise((resolve) => setTimeout(resolve, 20));
      }
    }
  };
  const savers = ["first", "second"].map(saver);
  for (let k = 0; k < SERVER_KILLS; k++) {
    const before = acknowledged.length;
    while (acknowledged.length < before + 3) await new Promise((resolve) => setTimeout(resolve, 5));
    await new Promise((resolve) => setTimeout(resolve, Math.random() * LONGEST_MS));
    await crash();
  }
  isOver = true;
  await Promise.all(savers);
  // Some save was always under way when the server went.
  expect(refused.length).toBeGreaterThanOrEqual(SERVER_KILLS);
  return acknowledged;
}
