import { createHash, randomBytes } from "node:crypto";
import type { Queries, Writing } from "./database.ts";
import { nextSequence } from "./jobRows.ts";
import type { NextRevision, RevisionDraft, SaveOutcome, Storage } from "./storage.ts";

export const sha256Of = (content: string | Uint8Array): string =>
  createHash("sha256").update(content).digest("hex");

/** 128 bits of chance as hexadecimal: a name nobody guesses, and that can be no path, formula or argument. */
export const newKey = (): string => randomBytes(16).toString("hex");

/** Saves: each one transaction, so that it is there with all that belongs to it or not at all. */
export function saveRows(queries: Queries): Pick<Storage, "createJob" | "saveRevision"> {
  return {
    createJob: (draft) =>
      queries.transaction().execute(async (writing): Promise<SaveOutcome> => {
        const sequence = await nextSequence(writing);
        const known = await knownChange(writing, draft.changeId);
        if (known !== null) return known;
        const key = newKey();
        const { revision } = draft;
        const row = jobRow(draft, { revision, sequence, summary: draft.summary ?? null });
        await writing
          .insertInto("jobs")
          .values({ key, is_archived: 0, ...row })
          .execute();
        await writing
          .insertInto("revisions")
          .values(revisionRow(draft, key, revision))
          .execute();
        return { outcome: "saved", key, revision };
      }),
    saveRevision: (next) =>
      queries.transaction().execute(async (writing): Promise<SaveOutcome> => {
        const sequence = await nextSequence(writing);
        const known = await knownChange(writing, next.changeId);
        if (known !== null) return known;
        const { key } = next;
        const head = await writing
          .selectFrom("jobs")
          .select("revision")
          .where("key", "=", key)
          .executeTakeFirst();
        if (head?.revision !== next.onRevision) return { outcome: "moved" };
        const revision = next.onRevision + 1;
        await writing
          .insertInto("revisions")
          .values(revisionRow(next, key, revision))
          .execute();
        const row = jobRow(next, { revision, sequence, summary: next.summary });
        await writing.updateTable("jobs").set(row).where("key", "=", key).execute();
        await addConflicts(writing, next, revision);
        return { outcome: "saved", key, revision };
      }),
  };
}

async function knownChange(writing: Writing, changeId: string): Promise<SaveOutcome | null> {
  const row = await writing
    .selectFrom("revisions")
    .select(["job_key as key", "revision"])
    .where("change_id", "=", changeId)
    .executeTakeFirst();
  return row === undefined ? null : { outcome: "known", ...row };
}

function jobRow(
  draft: RevisionDraft,
  at: {
    readonly revision: number;
    readonly sequence: number;
    readonly summary: string | null | undefined;
  },
) {
  const { hand, name, machine } = draft;
  const { revision, sequence, summary } = at;
  return {
    name,
    machine,
    revision,
    sequence,
    saved_at: hand.at,
    saved_by: hand.who,
    device: hand.device,
    // What the device did not say about this revision is not said anew: the older summary keeps its older number.
    ...(summary === undefined || summary === null ? {} : { summary, summary_revision: revision }),
  };
}

function revisionRow(draft: RevisionDraft, key: string, revision: number) {
  const { hand } = draft;
  return {
    job_key: key,
    revision,
    text: draft.text,
    sha256: sha256Of(draft.text),
    job_version: draft.jobVersion,
    saved_at: hand.at,
    saved_by: hand.who,
    device: hand.device,
    what_changed: draft.whatChanged,
    change_id: draft.changeId,
  };
}

async function addConflicts(writing: Writing, next: NextRevision, revision: number): Promise<void> {
  const { key, hand, conflicts = [], settles } = next;
  for (const [place, { conflict, theirsBy }] of conflicts.entries()) {
    const row = { id: newKey(), job_key: key, revision, place, conflict: JSON.stringify(conflict) };
    const by = { mine_by: hand.who, theirs_by: theirsBy, made_at: hand.at };
    await writing
      .insertInto("conflicts")
      .values({ ...row, ...by })
      .execute();
  }
  if (settles === undefined) return;
  const by = { settled_at: hand.at, settled_by: hand.who, revision };
  const { conflictId, take } = settles;
  await writing
    .insertInto("settlements")
    .values({ conflict_id: conflictId, take, ...by })
    .execute();
}
