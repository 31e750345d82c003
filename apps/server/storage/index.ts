/** Storage: jobs, revisions, photographs and exercises in the embedded database or in PostgreSQL, by one set of queries. */

export type { BackupContents, BackupRows, Restored } from "./backupRows.ts";
export type * from "./benchDatabase.ts";
export { STORAGE_VERSION } from "./migrations.ts";
export { openStorage, type StoragePlace } from "./openStorage.ts";
export { newKey, sha256Of } from "./saveRows.ts";
export type * from "./storage.ts";
export { StorageTrouble } from "./storageTrouble.ts";
