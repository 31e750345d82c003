import {
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from "node:fs";
import { createRequire } from "node:module";
import { homedir } from "node:os";
import { basename, dirname, join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { nodeBench } from "./nodeBench.ts";
import type { World } from "./world.ts";

/** The folder that holds what ships with the command: the nearest one above this file with demos in it. */
function shippedRoot(): string {
  let folder = dirname(fileURLToPath(import.meta.url));
  while (!existsSync(join(folder, "demos")) && dirname(folder) !== folder) folder = dirname(folder);
  return folder;
}

const root = shippedRoot();

/** Plain words for what the disk said. */
function whyOf(error: unknown): string {
  const { code } = error as { code?: string };
  const words: Record<string, string> = {
    ENOENT: "there is no such file or folder",
    EACCES: "permission was refused",
    EISDIR: "it is a folder, not a file",
    ENOTDIR: "part of the path is a file, not a folder",
    EROFS: "the disk can only be read",
    ENOSPC: "the disk is full",
  };
  return (code && words[code]) || String((error as Error).message ?? error);
}

function attempt<T>(action: () => T): { ok: true; value: T } | { ok: false; why: string } {
  try {
    return { ok: true, value: action() };
  } catch (error) {
    return { ok: false, why: whyOf(error) };
  }
}

function readText(path: string): ReturnType<World["readText"]> {
  const read = attempt(() => new TextDecoder("utf-8", { fatal: true }).decode(readFileSync(path)));
  if (read.ok) return { ok: true, text: read.value };
  return { ok: false, why: /encoded data/.test(read.why) ? "it is not UTF-8 text" : read.why };
}

/** Writes beside the target, then swaps by renaming: a crash leaves either the old folder or the new one. */
function replaceFolder(
  path: string,
  files: ReadonlyMap<string, Uint8Array>,
): ReturnType<World["replaceFolder"]> {
  const target = resolve(path);
  const made = attempt(() => {
    mkdirSync(dirname(target), { recursive: true });
    const fresh = mkdtempSync(join(dirname(target), `.${basename(target)}-`));
    try {
      for (const [name, bytes] of files) {
        mkdirSync(dirname(join(fresh, name)), { recursive: true });
        writeFileSync(join(fresh, name), bytes);
      }
      const old = `${fresh}-old`;
      if (existsSync(target)) renameSync(target, old);
      renameSync(fresh, target);
      rmSync(old, { recursive: true, force: true });
    } catch (error) {
      rmSync(fresh, { recursive: true, force: true });
      throw error;
    }
  });
  return made.ok ? { ok: true } : made;
}

/** Files that come with the command: demos in the checkout, fonts in their packages. */
function shipped(name: string): Uint8Array {
  if (name.startsWith("package:")) {
    return readFileSync(createRequire(import.meta.url).resolve(name.slice("package:".length)));
  }
  return readFileSync(join(root, name));
}

/** The person's settings: where the system says such files belong, else where they are by custom. */
function settingPath(name: string): string {
  const { XDG_CONFIG_HOME, APPDATA } = process.env;
  const base = XDG_CONFIG_HOME || (process.platform === "win32" && APPDATA) || "";
  return join(base === "" ? join(homedir(), ".config") : base, "copperwright", name);
}

/** Written beside and swapped in, so that a crash leaves the old text or the new one. */
function writeSetting(name: string, text: string): ReturnType<World["writeSetting"]> {
  const path = settingPath(name);
  const written = attempt(() => {
    mkdirSync(dirname(path), { recursive: true });
    writeFileSync(`${path}.new`, text);
    renameSync(`${path}.new`, path);
  });
  return written.ok ? { ok: true } : written;
}

/** The real world of a shell. */
export const nodeWorld: World = {
  readText,
  writeText: (path, text) => {
    const written = attempt(() => writeFileSync(path, text));
    return written.ok ? { ok: true } : written;
  },
  listFolder: (path) => (existsSync(path) ? readdirSync(path) : null),
  replaceFolder,
  readSetting: (name) =>
    existsSync(settingPath(name)) ? readText(settingPath(name)) : { ok: true, text: null },
  writeSetting,
  settingPath,
  shipped,
  listShipped: (folder) => readdirSync(join(root, folder)).sort(),
  out: (text) => void process.stdout.write(text),
  err: (text) => void process.stderr.write(text),
  bench: nodeBench(join(root, "apps/web/dist")),
};
