import type { PackIssue } from "@copperwright/engine/paper";
import { useMemo } from "react";
import { useBench } from "./benchStore.ts";

/** Which revision the job on the bench is, as its server counts them, and what is not in it yet. */
export function useIssue(): PackIssue | null {
  const revision = useBench((bench) => bench.document?.baseRevision ?? null);
  const savedAt = useBench((bench) => bench.document?.baseSavedAt ?? null);
  const unsavedCount = useBench((bench) => bench.document?.pending.length ?? 0);
  return useMemo(() => {
    if (revision === null) return null;
    // The day of the save; of what is not saved yet, today.
    const day = unsavedCount > 0 || savedAt === null ? new Date().toISOString() : savedAt;
    return { revision, date: day.slice(0, 10), unsavedCount };
  }, [revision, savedAt, unsavedCount]);
}
