import { writeSync } from "node:fs";
import type { MergeConflict } from "@copperwright/engine";
import { openStorage, type StoragePlace, sha256Of } from "./index.ts";

/**
 * A program of its own: saves to one job without end and writes a line for each save it was told is done. It is meant to be killed.
 * Arguments: the storage as JSON, the job's key, a name for its changes.
 */
const [placeText, key, name] = process.argv.slice(2) as [string, string, string];
const storage = await openStorage(JSON.parse(placeText) as StoragePlace);

const CONFLICT: MergeConflict = {
  kind: "both-changed",
  list: "wires",
  id: "W1",
  path: ["note"],
  mine: { isAbsent: true },
  theirs: { isAbsent: true },
  inUse: "theirs",
};

for (let n = 0; ; ) {
  const changeId = `${name}-${n}`;
  const head = await storage.revision(key);
  if (head === null) throw new Error("the job is gone");
  const text = textOf(changeId);
  const saved = await storage.saveRevision({
    key,
    onRevision: head.revision,
    changeId,
    text,
    jobVersion: 1,
    name: changeId,
    machine: "crash",
    whatChanged: changeId,
    hand: { who: name, device: name, at: new Date().toISOString() },
    conflicts: [{ conflict: CONFLICT, theirsBy: head.saved_by }],
  });
  if (saved.outcome !== "saved") continue;
  writeSync(1, `${changeId} ${saved.revision} ${sha256Of(text)}\n`);
  n++;
}

/** As long as a job's text, different in every line for every change. */
function textOf(changeId: string): string {
  return Array.from({ length: 400 }, (_, i) => `${changeId} line ${i} ${"x".repeat(40)}`).join(
    "\n",
  );
}
