import { nodeWorld } from "./nodeWorld.ts";
import { runCommandLine } from "./runCommandLine.ts";
import type { World } from "./world.ts";

/** What a command printed, wrote and told the shell. */
export interface Ran {
  readonly code: number;
  readonly out: string;
  readonly err: string;
  readonly folders: ReadonlyMap<string, ReadonlyMap<string, Uint8Array>>;
  /** The person's settings as they stand afterwards. */
  readonly settings: ReadonlyMap<string, string>;
}

/** Runs the command line with files from memory (else from the checkout) and folders kept in memory. */
export async function runWith(
  words: readonly string[],
  files: Readonly<Record<string, string>> = {},
  present: Readonly<Record<string, readonly string[]>> = {},
  settingsBefore: Readonly<Record<string, string>> = {},
): Promise<Ran> {
  let out = "";
  let err = "";
  const settings = new Map(Object.entries(settingsBefore));
  const folders = new Map<string, ReadonlyMap<string, Uint8Array>>();
  const world: World = {
    ...nodeWorld,
    readText: (path) =>
      files[path] === undefined ? nodeWorld.readText(path) : { ok: true, text: files[path] },
    writeText: () => ({ ok: true }),
    listFolder: (path) => present[path] ?? null,
    replaceFolder: (path, content) => {
      folders.set(path, content);
      return { ok: true };
    },
    readSetting: (name) => ({ ok: true, text: settings.get(name) ?? null }),
    writeSetting: (name, text) => {
      settings.set(name, text);
      return { ok: true };
    },
    settingPath: (name) => `settings/${name}`,
    out: (text) => {
      out += text;
    },
    err: (text) => {
      err += text;
    },
  };
  const code = await runCommandLine(world, words);
  return { code, out, err, folders, settings };
}
