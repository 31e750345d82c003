import type { PaperSize, SheetInfo } from "../drawing/index.ts";
import type { Job } from "../job/index.ts";
import type { CheckResult, Design } from "../judge/index.ts";
import type { EndFitting } from "../size/index.ts";
import { endFittings } from "../size/index.ts";
import { type SolvedState, solvedStates } from "./solvedStates.ts";
import type { StockList } from "./stock/stockRow.ts";

/** Everything a sheet may show. Papers compute nothing: they choose, order and word. */
export interface PaperInput {
  /** What will be on the machine. */
  readonly job: Job;
  readonly fingerprint: string;
  readonly design: Pick<Design, "routed" | "conductors" | "wiresAt">;
  readonly check: CheckResult;
  readonly paper: PaperSize;
  readonly info: SheetInfo;
  readonly fittings: readonly EndFitting[];
  readonly states: readonly SolvedState[];
  /** Changes made since the revision, on one device only; 0: none. */
  readonly unsavedCount: number;
  /** A shop's price list: the shopping list is then priced. */
  readonly stock?: StockList | undefined;
}

const NOTES = {
  fit: "nothing has to be put right",
  stop: "do not connect the battery",
  mend: "put right before use",
  "not-proven": "rests on unconfirmed figures",
} as const;

/** Everything the sheets of one pack are made from. */
export function paperInput(
  design: PaperInput["design"] & { readonly job: Job },
  check: CheckResult,
  {
    fingerprint,
    paper,
    stock,
    unsavedCount = 0,
  }: Pick<PaperInput, "fingerprint" | "paper" | "stock"> & { readonly unsavedCount?: number },
): PaperInput {
  const { job, conductors } = design;
  return {
    job,
    fingerprint,
    design,
    check,
    paper,
    info: sheetInfoOf(job, check, unsavedCount),
    unsavedCount,
    fittings: endFittings(job, conductors),
    states: solvedStates(job, conductors),
    stock,
  };
}

/** What every sheet says about the job, from the job and its verdict. */
export function sheetInfoOf(job: Job, check: CheckResult, unsavedCount = 0): SheetInfo {
  const { machine, supply } = job;
  const year = machine.year === undefined ? "" : `, ${machine.year}`;
  return {
    machine: `${machine.maker} ${machine.model}${year}`,
    jobId: job.id,
    jobName: job.name,
    revision: unsavedCount === 0 ? `${job.revision}` : `${job.revision}+${unsavedCount}`,
    date: job.date,
    nominalV: supply.nominalV,
    earthPolarity: supply.earthPolarity,
    verdict: check.verdict === "not-proven" ? "not proven" : check.verdict,
    verdictNote: verdictNote(check),
  };
}

function verdictNote({ verdict, counts }: CheckResult): string {
  const parts = [
    counts.stop > 0 ? `${counts.stop} stop` : "",
    counts.notProven > 0 ? `${counts.notProven} not proven` : "",
    counts.mend > 0 ? `${counts.mend} to mend` : "",
    counts.advise > 0 ? `${counts.advise} to know` : "",
  ].filter((part) => part !== "");
  return parts.length === 0 ? NOTES[verdict] : parts.slice(0, 2).join(", ");
}
