import type { Job, PartOf } from "../job/index.ts";
import { presentParts } from "../job/index.ts";
import { batterySource, type CompiledJob, type JobNetwork } from "../operate/index.ts";

/** Where two speeds do not fix a generator's line, its ceiling is taken this much above the largest output stated. */
const UNKNOWN_LINE_RATIO = 1.5;

/** The most each source can give, A: a battery its volts over its own resistance, a generator its ceiling at any speed. */
export function sourceCeilings(compiled: CompiledJob): ReadonlyMap<string, number> {
  const { job, conditions, jobNetwork } = compiled;
  const ceilings = new Map<string, number>();
  for (const part of presentParts(job)) {
    if (part.kind !== "battery") continue;
    const { emfV, internalOhm } = batterySource(part, "full", conditions.ambientC);
    ceilings.set(part.id, Math.max(emfV, highestSetV(job)) / internalOhm);
  }
  for (const source of jobNetwork.sources) {
    const { generator, line, leads, regulator, positive, exciter } = source;
    if (line === null) continue;
    const ceilingA = line.emfPerRpmRatio / line.reactancePerRpmRatio;
    ceilings.set(generator, ceilingA);
    if (regulator !== null) ceilings.set(regulator, ceilingA);
    const pins = [...leads, positive, ...(exciter === null ? [] : [exciter.positive])];
    for (const pin of pins) ceilings.set(pin.replace(/~$/, ""), ceilingA);
  }
  for (const part of presentParts(job)) {
    if (part.kind !== "generator" || ceilings.has(part.id)) continue;
    const stated = part.windings.flatMap(({ points }) =>
      (points ?? []).map(({ currentA }) => currentA),
    );
    if (stated.length > 0) ceilings.set(part.id, Math.max(...stated) * UNKNOWN_LINE_RATIO);
  }
  return ceilings;
}

/** A regulator sends what its generator makes. */
export const generatorOf = ({ sources }: JobNetwork, part: string): string =>
  sources.find(({ regulator }) => regulator === part)?.generator ?? part;

function highestSetV(job: Job): number {
  const sets = presentParts(job).flatMap((part) =>
    part.kind === "regulator" ? [(part as PartOf<"regulator">).setV.value] : [],
  );
  return Math.max(0, ...sets);
}
