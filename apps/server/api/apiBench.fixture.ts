import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { Hono } from "hono";
import { afterAll, beforeAll, describe } from "vitest";
import type { Visitor } from "../door/visitor.ts";
import { openStorage, type Storage } from "../storage/index.ts";
import { type PostgresForTests, startPostgres } from "../storage/postgresForTests.fixture.ts";
import { benchApi } from "./benchApi.ts";

export const OWNER: Visitor = { who: "Owner", device: "bench", role: "owner" };
export const EDITOR: Visitor = { who: "Edith", device: "tablet", role: "edit" };
export const LEARNER: Visitor = { who: "Lee", device: "telephone", role: "view" };

/** Making and starting a database takes its time on a busy machine, ms. */
const START_MS = 60_000;

export interface Answer {
  readonly status: number;
  readonly headers: Headers;
  readonly bytes: Uint8Array;
  // biome-ignore lint/suspicious/noExplicitAny: an answer is looked into field by field
  readonly body: any;
}

export interface ApiBench {
  readonly storage: Storage;
  /** What the clock says, ms; a test may move it on. */
  readonly time: { nowMs: number };
  readonly get: (path: string, visitor?: Visitor) => Promise<Answer>;
  readonly post: (path: string, body: unknown, visitor?: Visitor) => Promise<Answer>;
  readonly fresh: () => Promise<ApiBench>;
}

/** Runs the same tests on the embedded database and on a real PostgreSQL, each `open` with a storage of its own. */
export function onBothStorages(
  tests: (open: () => Promise<ApiBench>, kind: Storage["kind"]) => void,
): void {
  describe.each(["sqlite", "postgres"] as const)("on %s", (kind) => {
    const root = mkdtempSync(join(tmpdir(), "bench-api-"));
    const opened: Storage[] = [];
    let postgres: PostgresForTests | null = null;
    beforeAll(async () => {
      if (kind === "postgres") postgres = await startPostgres();
    }, START_MS);
    afterAll(async () => {
      for (const storage of opened) await storage.close();
      postgres?.stop();
      rmSync(root, { recursive: true, force: true });
    });
    const open = async (): Promise<ApiBench> => {
      const place =
        postgres === null
          ? { folder: mkdtempSync(join(root, "f-")) }
          : { postgresUrl: await postgres.freshUrl() };
      const storage = await openStorage(place);
      opened.push(storage);
      return { ...apiBench(storage), fresh: open };
    };
    tests(open, kind);
  });
}

export function apiBench(storage: Storage): Omit<ApiBench, "fresh"> {
  const time = { nowMs: Date.parse("2026-03-01T09:00:00Z") };
  const visiting: { visitor: Visitor } = { visitor: OWNER };
  const app = new Hono<{ Variables: { visitor: Visitor } }>();
  app.use("*", async (c, next) => {
    c.set("visitor", visiting.visitor);
    await next();
  });
  app.route(
    "/api",
    benchApi(storage, () => new Date(time.nowMs)),
  );
  const ask = async (path: string, init: RequestInit, visitor: Visitor): Promise<Answer> => {
    visiting.visitor = visitor;
    const response = await app.request(`/api${path}`, init);
    const bytes = new Uint8Array(await response.arrayBuffer());
    const isJson = response.headers.get("content-type")?.includes("json");
    const body = isJson ? JSON.parse(new TextDecoder().decode(bytes)) : null;
    return { status: response.status, headers: response.headers, bytes, body };
  };
  return {
    storage,
    time,
    get: (path, visitor = OWNER) => ask(path, {}, visitor),
    post: (path, body, visitor = OWNER) => {
      const headers = { "content-type": "application/json", "x-copperwright": "1" };
      const text = typeof body === "string" ? body : JSON.stringify(body);
      return ask(path, { method: "POST", headers, body: text }, visitor);
    },
  };
}

let changeCount = 0;

/** A change of one field of one wire. */
export function noteChange(wire: string, note: string, baseRevision = 1) {
  return {
    changeId: `change-${String(++changeCount).padStart(6, "0")}`,
    baseRevision,
    jobVersion: 1,
    operations: [{ op: "set", list: "wires", id: wire, path: ["note"], value: note }],
    what: `Note on ${wire}`,
  };
}
