import type { Verdict } from "./verdictStamp.ts";

/** What every sheet of a job says about the job. */
export interface SheetInfo {
  /** "Marlow 650 twin, 1958". */
  readonly machine: string;
  readonly jobId: string;
  readonly jobName: string;
  /** "7"; "7+2" where two changes since are not saved. */
  readonly revision: string;
  /** YYYY-MM-DD. */
  readonly date: string;
  readonly nominalV: number;
  readonly earthPolarity: "positive" | "negative";
  readonly verdict: Verdict;
  /** Counts or reason under the verdict: "2 to mend". */
  readonly verdictNote: string;
}

const MONTHS = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

/** 2026-11-05 as 5 Nov 2026: no order of figures to mistake. */
export function dateText(date: string): string {
  const [year, month, day] = date.split("-");
  return `${Number(day)} ${MONTHS[Number(month) - 1]} ${year}`;
}

/** Signs of the live and the earthed pole, with the true minus. */
export const poleSigns = (info: SheetInfo): { readonly live: string; readonly earth: string } =>
  info.earthPolarity === "positive" ? { live: "−", earth: "+" } : { live: "+", earth: "−" };
