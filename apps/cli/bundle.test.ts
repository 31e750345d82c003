import { spawn, spawnSync } from "node:child_process";
import { mkdirSync, mkdtempSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { buildCommand } from "../../tools/build.ts";
import { ROOT } from "../../tools/sourceFiles.ts";

/** Inside the checkout, so that the bundle finds the libraries that stay outside it. */
const dist = join(ROOT, "node_modules/.cache", `copperwright-bundle-${process.pid}`);
const scratch = mkdtempSync(join(tmpdir(), "copperwright-bundle-"));
beforeAll(() => buildCommand(dist));
afterAll(() => {
  for (const folder of [dist, scratch]) rmSync(folder, { recursive: true, force: true });
});

const command = join(dist, "main.mjs");
const run = (words: readonly string[], before: readonly string[] = []) =>
  spawnSync(process.execPath, [...before, command, ...words], { cwd: ROOT, encoding: "utf8" });

interface Opened {
  readonly address: string;
  stop(signal: NodeJS.Signals): Promise<{ readonly code: number | null; readonly out: string }>;
}

/** The bench in a process of its own, once it has said its address. */
function opened(before: readonly string[] = []): Promise<Opened> {
  const words = ["open", join(scratch, "work"), "--port", "0", "--no-browser"];
  const child = spawn(process.execPath, [...before, command, ...words], { cwd: scratch });
  let out = "";
  const ended = new Promise<number | null>((resolve) => child.once("exit", resolve));
  const stop: Opened["stop"] = async (signal) => {
    child.kill(signal);
    return { code: await ended, out };
  };
  return new Promise((resolve, reject) => {
    child.stdout.on("data", (piece) => {
      out += piece;
      const found = /http:\/\/127\.0\.0\.1:\d+/.exec(out);
      if (found !== null) resolve({ address: found[0], stop });
    });
    void ended.then((code) => reject(new Error(`ended with ${code}`)));
  });
}

/** Words for Node by which one library cannot be found. */
function hiding(library: string): readonly string[] {
  mkdirSync(scratch, { recursive: true });
  const hooks = join(scratch, `hide-${library}.mjs`);
  const register = join(scratch, `register-${library}.mjs`);
  writeFileSync(
    hooks,
    `export const resolve = (name, context, next) => {
      if (name !== ${JSON.stringify(library)}) return next(name, context);
      const error = new Error("Cannot find package '" + name + "'");
      error.code = "ERR_MODULE_NOT_FOUND";
      throw error;
    };`,
  );
  writeFileSync(
    register,
    `import { register } from "node:module"; register(${JSON.stringify(pathToFileURL(hooks).href)});`,
  );
  return ["--import", pathToFileURL(register).href];
}

describe("the bundled command", () => {
  test("opens the bench, and closes it cleanly when it is told to stop", async () => {
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      const { address, stop } = await opened();
      expect((await fetch(`${address}/api/session`)).status).toBe(401);
      const { code, out } = await stop(signal);
      expect(code).toBe(0);
      expect(out).toContain("The bench is closed");
    }
  });

  test("does not read the server for any other command", () => {
    const server = join(dist, "server.mjs");
    const away = join(dist, "server-away.mjs");
    renameSync(server, away);
    try {
      expect(run(["demo"])).toMatchObject({ status: 0, stderr: "" });
      expect(run(["open", "--port", "0"]).status).not.toBe(0);
    } finally {
      renameSync(away, server);
    }
  });

  test.each(["better-sqlite3", "sharp"])("works without %s", (library) => {
    const before = hiding(library);
    const listed = run(["demo"], before);
    expect([listed.status, listed.stderr]).toEqual([0, ""]);
    expect(listed.stdout).toContain("aldreth-single");
    const checked = run(["check", "demos/accessory-five-wires.json"], before);
    expect([checked.status, checked.stderr]).toEqual([0, ""]);
    expect(checked.stdout).toContain("FIT");
  });

  test("without the embedded database the bench says so in words", () => {
    const words = ["open", join(scratch, "hidden"), "--port", "0", "--no-browser"];
    const refused = run(words, hiding("better-sqlite3"));
    expect([refused.status, refused.stdout]).toEqual([2, ""]);
    expect(refused.stderr).toContain("better-sqlite3");
    expect(refused.stderr).toMatch(/npm\s(ci|install)/);
  });

  test("without the picture library the bench opens all the same", async () => {
    const { address, stop } = await opened(hiding("sharp"));
    expect((await fetch(`${address}/api/session`)).status).toBe(401);
    expect((await stop("SIGINT")).code).toBe(0);
  });
});
