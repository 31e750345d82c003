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
    const words = ["open", join(scratch, "work"), "--port", "0", "--no-browser"];
    for (const signal of ["SIGINT", "SIGTERM"] as const) {
      const child = spawn(process.execPath, [command, ...words], { cwd: scratch });
      let out = "";
      const address = await new Promise<string>((resolve, reject) => {
        child.stdout.on("data", (piece) => {
          out += piece;
          const found = /http:\/\/127\.0\.0\.1:\d+/.exec(out);
          if (found !== null) resolve(found[0]);
        });
        child.once("exit", (code) => reject(new Error(`ended with ${code}`)));
      });
      expect((await fetch(`${address}/api/session`)).status).toBe(401);
      const ended = new Promise((resolve) =>
        child.removeAllListeners("exit").once("exit", resolve),
      );
      child.kill(signal);
      expect(await ended).toBe(0);
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

  test.each(["better-sqlite3", "sharp"])("works without %s, all but the bench", (library) => {
    const before = hiding(library);
    const listed = run(["demo"], before);
    expect([listed.status, listed.stderr]).toEqual([0, ""]);
    expect(listed.stdout).toContain("aldreth-single");
    const checked = run(["check", "demos/accessory-five-wires.json"], before);
    expect([checked.status, checked.stderr]).toEqual([0, ""]);
    expect(checked.stdout).toContain("FIT");
    const words = ["open", join(scratch, "hidden"), "--port", "0", "--no-browser"];
    const opened = run(words, before);
    expect([opened.status, opened.stdout]).toEqual([2, ""]);
    expect(opened.stderr).toContain(library);
    expect(opened.stderr).toMatch(/npm\s(ci|install)/);
  });
});
