import { Zip, ZipDeflate, ZipPassThrough } from "fflate";
import { STORAGE_VERSION, type Storage } from "../storage/index.ts";
import { BACKUP_FORMAT } from "./backupManifest.ts";
import { textDelta } from "./textDelta.ts";

const utf8 = new TextEncoder();
/** Beyond this the archive's own figures overflow, bytes. */
const MOST_BYTES = 4_000_000_000;
const MOST_PHOTOGRAPHS = 65_000;
/** Pieces made ahead of the reader. */
const AHEAD_COUNT = 64;

/**
 * Everything as one zip, made piece by piece as it is read: every row; what each revision changed in its text; every photograph once.
 * Revisions never change, so what is saved while it runs is simply not in it.
 */
export function backupStream(storage: Storage, madeAt: string): ReadableStream<Uint8Array> {
  let isLeft = false;
  return new ReadableStream<Uint8Array>({
    start(controller) {
      const isWanted = () => !isLeft;
      void writeBackup(storage, madeAt, controller, isWanted).catch((error: unknown) => {
        console.error(error instanceof Error ? error.stack : error);
        if (!isLeft) controller.error(error);
      });
    },
    cancel() {
      isLeft = true;
    },
  });
}

type Controller = ReadableStreamDefaultController<Uint8Array>;

async function writeBackup(
  storage: Storage,
  madeAt: string,
  controller: Controller,
  isWanted: () => boolean,
): Promise<void> {
  const rows = await storage.backupRows();
  if (rows.photographs.length > MOST_PHOTOGRAPHS)
    throw new Error("too many photographs for one backup");
  let madeBytes = 0;
  const zip = new Zip((error, chunk, isLast) => {
    if (error) throw error;
    madeBytes += chunk.length;
    if (madeBytes > MOST_BYTES)
      throw new Error("the backup would be larger than an archive can be");
    controller.enqueue(chunk);
    if (isLast) controller.close();
  });
  const manifest = {
    copperwrightBackup: BACKUP_FORMAT,
    storageVersion: STORAGE_VERSION,
    madeAt,
    rows,
  };
  const list = new ZipDeflate("backup.json");
  zip.add(list);
  list.push(utf8.encode(JSON.stringify(manifest)), true);

  const texts = new ZipDeflate("texts.json");
  zip.add(texts);
  let before = { key: "", text: "" };
  for (const [i, { job_key: key, revision, sha256 }] of rows.revisions.entries()) {
    const row = await storage.revision(key, revision);
    if (row?.sha256 !== sha256) throw new Error(`revision ${revision} of ${key} is missing`);
    const delta = textDelta(before.key === key ? before.text : "", row.text);
    texts.push(utf8.encode(`${i === 0 ? "[" : ",\n"}${JSON.stringify(delta)}`), false);
    before = { key, text: row.text };
    if (!(await isReaderThere(controller, isWanted))) return;
  }
  texts.push(utf8.encode(rows.revisions.length === 0 ? "[]" : "]"), true);

  for (const { sha256 } of rows.photographs) {
    const photograph = await storage.photograph(sha256);
    if (photograph === null) throw new Error(`the photograph ${sha256} is missing`);
    // A JPEG does not get smaller.
    const entry = new ZipPassThrough(`photographs/${sha256}.jpg`);
    zip.add(entry);
    entry.push(new Uint8Array(photograph.bytes), true);
    if (!(await isReaderThere(controller, isWanted))) return;
  }
  zip.end();
}

/** Waits until the reader has taken most of what was made, so that a large backup is never in memory whole; others are served meanwhile. */
async function isReaderThere(controller: Controller, isWanted: () => boolean): Promise<boolean> {
  do {
    await new Promise((resolve) => setImmediate(resolve));
    if (!isWanted()) return false;
  } while ((controller.desiredSize ?? 0) < -AHEAD_COUNT);
  return true;
}
