import { type DBSchema, type IDBPDatabase, openDB } from "idb";
import type { Act, DocumentState, PendingChange } from "../store/documentState.ts";

/** A job as this device keeps it: enough to go on working without the server, after a crash of the tab or of the machine. */
export interface KeptDocument {
  readonly key: string;
  readonly baseRevision: number;
  /** Absent in what earlier versions of the app kept. */
  readonly baseSavedAt?: string | null;
  /** Canonical text with everything pending done to it. */
  readonly text: string;
  readonly pending: readonly PendingChange[];
  readonly undo: readonly Act[];
  readonly redo: readonly Act[];
}

interface DeviceSchema extends DBSchema {
  documents: { key: string; value: KeptDocument };
  /** Answers of the server that the app shows again without it: the list of jobs, the session. */
  lasting: { key: string; value: unknown };
}

let opened: Promise<IDBPDatabase<DeviceSchema>> | null = null;

function database(): Promise<IDBPDatabase<DeviceSchema>> {
  opened ??= openDB<DeviceSchema>("copperwright", 1, {
    upgrade(db) {
      db.createObjectStore("documents", { keyPath: "key" });
      db.createObjectStore("lasting");
    },
  });
  return opened;
}

/** Resolves when the device has the document on its disk ("strict": written through, not only handed over). */
export async function keepDocument(state: DocumentState, text: string): Promise<void> {
  const { key, baseRevision, baseSavedAt, pending, undo, redo } = state;
  const db = await database();
  const write = db.transaction("documents", "readwrite", { durability: "strict" });
  await Promise.all([
    write.store.put({ key, baseRevision, baseSavedAt, text, pending, undo, redo }),
    write.done,
  ]);
}

export async function keptDocument(key: string): Promise<KeptDocument | null> {
  return (await (await database()).get("documents", key)) ?? null;
}

export async function keptKeys(): Promise<readonly string[]> {
  return (await database()).getAllKeys("documents");
}

export async function keepLasting(name: string, value: unknown): Promise<void> {
  await (await database()).put("lasting", value, name);
}

export async function lasting<T>(name: string): Promise<T | null> {
  return ((await (await database()).get("lasting", name)) as T | undefined) ?? null;
}
