import {
  chmodSync,
  closeSync,
  fsyncSync,
  mkdirSync,
  openSync,
  readFileSync,
  renameSync,
  rmSync,
  writeSync,
} from "node:fs";
import { join } from "node:path";

const ONLY_OWNER_FOLDER = 0o700;
const ONLY_OWNER_FILE = 0o600;

/** Small records of this server alone: who may come in, and with which keys. Not in the storage, so in no backup and on no other server. */
export interface PrivateFiles {
  readonly folder: string;
  /** The record as it was written; null where there is none. */
  read(name: string): unknown;
  /** On the disk when it returns; a crash leaves the former record or this one. */
  write(name: string, value: unknown): void;
  remove(name: string): void;
}

/** Files in a folder that only its owner can read. Names are the program's own, never a visitor's. */
export function privateFiles(folder: string): PrivateFiles {
  mkdirSync(folder, { recursive: true, mode: ONLY_OWNER_FOLDER });
  chmodSync(folder, ONLY_OWNER_FOLDER);
  const pathOf = (name: string) => join(folder, `${name}.json`);
  return {
    folder,
    read: (name) => {
      try {
        return JSON.parse(readFileSync(pathOf(name), "utf8"));
      } catch (error) {
        if ((error as { code?: string }).code === "ENOENT") return null;
        throw error;
      }
    },
    write: (name, value) => {
      const fresh = `${pathOf(name)}.new`;
      rmSync(fresh, { force: true });
      const file = openSync(fresh, "wx", ONLY_OWNER_FILE);
      try {
        writeSync(file, `${JSON.stringify(value, null, 1)}\n`);
        fsyncSync(file);
      } finally {
        closeSync(file);
      }
      renameSync(fresh, pathOf(name));
    },
    remove: (name) => rmSync(pathOf(name), { force: true }),
  };
}
