import type { Job } from "../job/index.ts";
import type { Figure } from "../tables/index.ts";
import { figure } from "../tables/index.ts";
import type { Routed, WireRoute } from "./routed.ts";

/** What is added to a path, each from the job's decisions or tables/cutAllowances. */
export interface Allowances {
  readonly stripMm: number;
  readonly reterminationMm: number;
  readonly reterminationCount: number;
  readonly flexSlackMm: number;
  /** At each end; 0 unless this is the first loom of its kind. */
  readonly trimMm: number;
  readonly roundUpMm: number;
  readonly wastePercent: number;
}

/** The parts of one cut length, mm; they add up to `total`. */
export interface CutLength {
  readonly path: number;
  readonly strip: number;
  readonly retermination: number;
  readonly flex: number;
  readonly trim: number;
  readonly rounding: number;
  readonly total: number;
}

const row = (id: Parameters<typeof allowance>[0]): number => allowance(id).value;

/** The published or customary figure behind an allowance, to be cited. */
export const allowance = (
  id: "strip" | "retermination" | "reterminations" | "flex-slack" | "round-up" | "waste" | "trim",
): Figure => figure("cutAllowances", id, "value");

export function allowancesOf(job: Job): Allowances {
  const own = job.decisions.allowances ?? {};
  return {
    stripMm: own.stripMm ?? row("strip"),
    reterminationMm: own.reterminationMm ?? row("retermination"),
    reterminationCount: own.reterminationCount ?? row("reterminations"),
    flexSlackMm: own.flexSlackMm ?? row("flex-slack"),
    trimMm: job.decisions.lengthMode === "first-off" ? (own.trimMm ?? row("trim")) : 0,
    roundUpMm: own.roundUpMm ?? row("round-up"),
    wastePercent: own.wastePercent ?? row("waste"),
  };
}

/**
 * What to cut for one wire.
 *
 *   total = path + 2 · strip + 2 · count · retermination + flex slack + 2 · trim, rounded up
 *
 * @param route       flex slack is added once where the way passes a moving run.
 * @param allowances  mm; `roundUpMm` 0 rounds nothing.
 * @returns null where the path is not known: an unknown length is never cut.
 */
export function cutLength(route: WireRoute, allowances: Allowances): CutLength | null {
  if (route.lengthMm === null) return null;
  const path = route.lengthMm;
  const strip = 2 * allowances.stripMm;
  const retermination = 2 * allowances.reterminationCount * allowances.reterminationMm;
  const flex = route.flexRuns.length > 0 ? allowances.flexSlackMm : 0;
  const trim = 2 * allowances.trimMm;
  const sum = path + strip + retermination + flex + trim;
  const total = roundedUp(sum, allowances.roundUpMm);
  return { path, strip, retermination, flex, trim, rounding: total - sum, total };
}

/** Up to the next whole multiple. A sum that is one but for the last bits of a double stays. */
function roundedUp(sum: number, stepMm: number): number {
  if (stepMm === 0) return sum;
  const steps = sum / stepMm;
  const nearest = Math.round(steps);
  const isWhole = Math.abs(steps - nearest) <= 1e-9 * Math.max(1, nearest);
  return (isWhole ? nearest : Math.ceil(steps)) * stepMm;
}

/** Cut length of every wire of the job that was routed; null where its path is not known. */
export function cutLengthsOf(job: Job, routed: Routed): ReadonlyMap<string, CutLength | null> {
  const allowances = allowancesOf(job);
  return new Map([...routed.wires].map(([wire, route]) => [wire, cutLength(route, allowances)]));
}
