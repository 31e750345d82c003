import { type Refused, refused } from "../api/refuse.ts";
import type { BackupContents, BackupRows } from "../storage/index.ts";
import { manifestSchema, textsSchema } from "./backupManifest.ts";
import { backupPictures } from "./backupPictures.ts";
import { backupTexts } from "./backupTexts.ts";
import { misplacedRow } from "./misplacedRow.ts";
import { unzipEntry, zipEntries } from "./zipEntries.ts";

const MEGABYTE = 1_000_000;
/** Most that is unpacked, bytes. */
const MOST_BYTES = 400 * MEGABYTE;

export type BackupRead =
  | { readonly ok: true; readonly rows: BackupRows; readonly contents: BackupContents }
  | Refused;

const damaged = (fault: string): Refused => refused("backup-unreadable", { fault });

/**
 * A backup, read and checked whole before any of it is used. Sizes are added up from the archive's own list before anything is unpacked, and
 * no entry can grow beyond what the list says. Entries are known by their order and by the hash of what they hold: no name is used.
 */
export async function readBackup(archive: Uint8Array): Promise<BackupRead> {
  const entries = zipEntries(archive);
  if (entries === null || entries.length < 2) return damaged("it is no zip archive of ours");
  const unpackedBytes = entries.reduce((sum, { bytes }) => sum + bytes, 0);
  if (unpackedBytes > MOST_BYTES) {
    return refused("backup-too-large", { limit: `${MOST_BYTES / MEGABYTE} MB` });
  }
  const [list, changes, ...pictures] = entries;
  const value = json(unzipEntry(archive, list!));
  if (isNewer(value)) return refused("backup-newer", {});
  const manifest = manifestSchema.safeParse(value);
  if (!manifest.success) return damaged(faultOf("its list", manifest.error.issues));
  const { rows } = manifest.data;
  const misplaced = misplacedRow(rows);
  if (misplaced !== null) return damaged(misplaced);

  const deltas = textsSchema.safeParse(json(unzipEntry(archive, changes!)));
  if (!deltas.success) return damaged(faultOf("its texts", deltas.error.issues));
  const texts = await backupTexts(rows, deltas.data);
  if (!texts.ok) return texts;
  const photographs = await backupPictures(rows, archive, pictures);
  if (!photographs.ok) return photographs;
  return { ok: true, rows, contents: { text: texts.text, photograph: photographs.photograph } };
}

/** Undefined where there is nothing, or nothing that is JSON. */
function json(bytes: Uint8Array | null): unknown {
  if (bytes === null) return undefined;
  try {
    return JSON.parse(new TextDecoder("utf-8", { fatal: true }).decode(bytes));
  } catch {
    return undefined;
  }
}

function faultOf(
  what: string,
  issues: readonly { readonly path: readonly PropertyKey[]; readonly message: string }[],
): string {
  const [issue] = issues;
  const place = issue?.path.map(String).join(".").slice(0, 80);
  return `${what}${place ? ` at ${place}` : ""}: ${issue?.message.slice(0, 120)}`;
}

/** A list that says it is ours, in a version this program does not know. */
function isNewer(value: unknown): boolean {
  if (typeof value !== "object" || value === null) return false;
  const { copperwrightBackup, storageVersion } = manifestSchema.shape;
  const said = value as Readonly<Record<string, unknown>>;
  const isNumber = (name: string): boolean => typeof said[name] === "number";
  if (!isNumber("copperwrightBackup") || !isNumber("storageVersion")) return false;
  return !(
    copperwrightBackup.safeParse(said.copperwrightBackup).success &&
    storageVersion.safeParse(said.storageVersion).success
  );
}
