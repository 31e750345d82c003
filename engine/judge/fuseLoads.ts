import type { Job } from "../job/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import type { CurrentTally } from "./currentTally.ts";
import type { Currents } from "./worstCase.ts";

/** Largest currents of all elements after each of three searches, A: on the full battery, at charging volts, with the engine running. */
export interface Stages {
  readonly fullA: Float64Array;
  readonly chargedA: Float64Array;
  readonly runningA: Float64Array;
}

/**
 * What a fuse is chosen by: its load at test volts (13.5 of 12), where lamps draw what they are tested at. Between the full
 * battery and the charging volts the current is read off a straight line:
 *
 *   I = I_full + (I_charged − I_full) · (V_test − V_full) / (V_charged − V_full)
 *
 * What only flows with the engine running (charge through the fuse) stands as it is.
 */
export function fuseLoads(
  job: Job,
  { jobNetwork }: CompiledJob,
  stages: Stages,
  at: { readonly chargedV: number | null; readonly charged: Currents },
): Currents {
  const testV = testVolts(job);
  const fullV = batteryEmfV(jobNetwork);
  if (at.chargedV === null || fullV === null || at.chargedV <= fullV) return at.charged;
  const share = Math.min(1, Math.max(0, (testV - fullV) / (at.chargedV - fullV)));
  const loads = new Map(at.charged);
  for (const [k, { kind, of }] of jobNetwork.elements.entries()) {
    const most = at.charged.get(of);
    if (kind !== "fuse" || most === undefined) continue;
    const [fullA, chargedA] = [stages.fullA[k]!, stages.chargedA[k]!];
    if (stages.runningA[k]! > chargedA) continue;
    const currentA = fullA + (chargedA - fullA) * share;
    loads.set(of, { ...most, currentA, batteryV: most.state === null ? null : testV });
  }
  return loads;
}

/** Test volts of lamps are to nominal volts as those of a tested lamp. */
function testVolts(job: Job): number {
  const test = figure("lamps", "p21w-12", "testV");
  const nominal = figure("lamps", "p21w-12", "nominalV");
  return (job.supply.nominalV * test.value) / nominal.value;
}

function batteryEmfV({ elements }: CompiledJob["jobNetwork"]): number | null {
  const emf = elements.find(({ kind }) => kind === "emf")?.law;
  return emf?.kind === "emf" ? Math.abs(emf.emfV) : null;
}

export const stageOf = ({ mostA }: CurrentTally): Float64Array => mostA.slice();
