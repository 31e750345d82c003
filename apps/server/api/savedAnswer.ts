import type { Storage } from "../storage/index.ts";
import type { BenchContext } from "./bench.ts";
import { conflictAnswer } from "./jobAnswers.ts";
import { answerRefused, type Refused, refuse } from "./refuse.ts";

/** What a save answers: the revision as it was stored, with the conflicts that came with it. The same for the same change sent again. */
export async function savedAnswer(
  c: BenchContext,
  storage: Storage,
  key: string,
  saved: { readonly ok: true; readonly revision: number } | Refused,
): Promise<Response> {
  if (!saved.ok) return answerRefused(c, saved);
  const row = await storage.revision(key, saved.revision);
  if (row === null) return refuse(c, "no-such-revision", { revision: saved.revision });
  const conflicts = (await storage.conflicts(key, saved.revision)).map(conflictAnswer);
  const { revision, text, saved_at, saved_by } = row;
  return c.json({ revision, text, savedAt: saved_at, savedBy: saved_by, conflicts });
}
