import { type DBSchema, type IDBPDatabase, openDB } from "idb";

/** A photograph as this device keeps it: its own until the server has it, and a copy for working without the server afterwards. */
export interface KeptPhotograph {
  readonly id: string;
  /** Job it was taken for. */
  readonly key: string;
  readonly name: string;
  readonly picture: Blob;
  readonly isWaiting: boolean;
  readonly keptAtMs: number;
}

interface PhotographSchema extends DBSchema {
  photographs: { key: string; value: KeptPhotograph };
}

/** Copies of what the server has; what waits is never dropped. */
const MOST_COPIES = 60;
let opened: Promise<IDBPDatabase<PhotographSchema>> | null = null;

/** A database of its own, so that an older page left open does not hold up the jobs'. */
function database(): Promise<IDBPDatabase<PhotographSchema>> {
  opened ??= openDB<PhotographSchema>("copperwright-photographs", 1, {
    upgrade(db) {
      db.createObjectStore("photographs", { keyPath: "id" });
    },
  });
  return opened;
}

/** Resolves when the device has it on its disk. */
export async function keepPhotograph(photograph: KeptPhotograph): Promise<void> {
  const db = await database();
  const write = db.transaction("photographs", "readwrite", { durability: "strict" });
  await Promise.all([write.store.put(photograph), write.done]);
  const copies = (await db.getAll("photographs")).filter(({ isWaiting }) => !isWaiting);
  const oldest = copies.sort((a, b) => b.keptAtMs - a.keptAtMs).slice(MOST_COPIES);
  for (const { id } of oldest) await db.delete("photographs", id);
}

export async function keptPhotograph(id: string): Promise<KeptPhotograph | null> {
  return (await (await database()).get("photographs", id)) ?? null;
}

export async function waitingPhotographs(): Promise<readonly KeptPhotograph[]> {
  return (await (await database()).getAll("photographs")).filter(({ isWaiting }) => isWaiting);
}

export async function dropPhotograph(id: string): Promise<void> {
  await (await database()).delete("photographs", id);
}
