import type { Job } from "@copperwright/engine";
import type { NextRevision, SaveOutcome, Storage } from "../storage/index.ts";
import { rememberJob } from "./jobMemo.ts";
import { type Refused, refused } from "./refuse.ts";
import { jobOfRow, jobText } from "./storedJob.ts";

/** How often a save is made anew when another server on the same database came between. */
const TRIES_COUNT = 20;

export interface Head {
  readonly job: Job;
  readonly revision: number;
  readonly savedBy: string;
}

/** What a save makes of the head it finds. */
export type Made =
  | ({ readonly ok: true; readonly job: Job } & Pick<NextRevision, "conflicts" | "settles">)
  | Refused;

type Done = Extract<SaveOutcome, { key: string }>;
export type SavedOnHead = (Done & { readonly ok: true }) | Refused;

type Words = Pick<NextRevision, "changeId" | "whatChanged" | "hand" | "summary">;

/** Saves what `make` makes of the newest revision; made anew where the head has moved in between. */
export async function saveOnHead(
  storage: Storage,
  key: string,
  words: Words,
  make: (head: Head) => Promise<Made> | Made,
): Promise<SavedOnHead> {
  const known = await storage.changeDone(words.changeId);
  if (known !== null) return ofThisJob({ outcome: "known", ...known }, key);
  for (let i = 0; i < TRIES_COUNT; i++) {
    const row = await storage.revision(key);
    if (row === null) return refused("no-such-job", {});
    const read = jobOfRow(row);
    if (!read.ok) return read;
    const made = await make({ job: read.job, revision: row.revision, savedBy: row.saved_by });
    if (!made.ok) return made;
    const { job, conflicts = [], settles } = made;
    const said = jobText(job);
    const saved = await storage.saveRevision({
      ...words,
      ...said,
      key,
      onRevision: row.revision,
      conflicts,
      ...(settles === undefined ? {} : { settles }),
    });
    if (saved.outcome === "saved") rememberJob(said.text, job);
    if (saved.outcome !== "moved") return ofThisJob(saved, key);
  }
  return refused("busy", {});
}

function ofThisJob(saved: Done, key: string): SavedOnHead {
  return saved.key === key ? { ok: true, ...saved } : refused("change-id-taken", {});
}
