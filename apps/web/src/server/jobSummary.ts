import { useBench } from "../store/benchStore.ts";

/** What the wall of jobs shows without opening one: the verdict with the revision it belongs to. Never read back as a result. */
export interface JobSummary {
  readonly verdict: string;
  readonly counts: { readonly stop: number; readonly mend: number; readonly advise: number };
  readonly wires: number;
}

export function jobSummary(): JobSummary | null {
  const { document, verdict } = useBench.getState();
  if (document === null || verdict.result === null) return null;
  const { stop, mend, advise } = verdict.result.counts;
  return {
    verdict: verdict.result.verdict,
    counts: { stop, mend, advise },
    wires: document.job.wires.length,
  };
}
