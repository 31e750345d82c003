import { type Refused, refused } from "../api/refuse.ts";
import { isCleanPhotograph } from "../photograph/cleanPhotograph.ts";
import { type BackupContents, type BackupRows, sha256Of } from "../storage/index.ts";
import { unzipEntry, type ZipEntry } from "./zipEntries.ts";

/** The photographs of a backup by the hash of what they hold; each has to be a picture as this server makes them. */
export async function backupPictures(
  rows: BackupRows,
  archive: Uint8Array,
  entries: readonly ZipEntry[],
): Promise<({ readonly ok: true } & Pick<BackupContents, "photograph">) | Refused> {
  const damaged = (fault: string): Refused => refused("backup-unreadable", { fault });
  const wanted = new Set(rows.photographs.map(({ sha256 }) => sha256));
  const found = new Map<string, ZipEntry>();
  for (const entry of entries) {
    const bytes = unzipEntry(archive, entry);
    if (bytes === null) return damaged("an entry does not unpack to its size");
    const sha256 = sha256Of(bytes);
    if (!wanted.has(sha256)) return damaged("it holds something its list does not name");
    if (!(await isCleanPhotograph(bytes))) return damaged("a photograph is not one of ours");
    found.set(sha256, entry);
  }
  if (found.size !== wanted.size) return damaged("a photograph is missing");
  return {
    ok: true,
    photograph: (sha256) => {
      const entry = found.get(sha256);
      const bytes = entry === undefined ? null : unzipEntry(archive, entry);
      if (bytes === null) throw new Error("a photograph that was checked is gone");
      return bytes;
    },
  };
}
