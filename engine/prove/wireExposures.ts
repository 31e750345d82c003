import type { Job, PartOf } from "../job/index.ts";
import { presentParts } from "../job/index.ts";
import { batterySource, type CompiledJob } from "../operate/index.ts";
import type { Guard, Protection } from "../protect/index.ts";
import type { Routed } from "../route/index.ts";
import { FRAME, touchedUpstream } from "./touchedUpstream.ts";

/** A source that can drive a fault current through a conductor, and what stands between. */
export interface Exposure {
  readonly source: string;
  readonly sourceKind: Guard["sourceKind"];
  /** Fuses that cut every way; empty: none does. */
  readonly cut: readonly string[];
  readonly sumA: number | null;
  /** Largest current the source can ever give, A. */
  readonly largestA: number;
  /** Conductor it would have to touch for that; null: the source reaches it by itself. */
  readonly through: string | null;
  /** The conductor that is touched: itself, or one upstream on the way to earth. */
  readonly at: string | null;
  /** Load that would have to be bridged; null: none. */
  readonly via: string | null;
  readonly positions: Readonly<Record<string, string>>;
  /** Wire before the first fuse, mm; null: not measured. */
  readonly unfusedMm: number | null;
}

/**
 * Every source and set of fuses a conductor is exposed to: those that feed it; and, of a return, those that feed anything that can touch
 * the return upstream of it. Each set comes once, with the fewest conditions.
 */
export function wireExposures(
  compiled: CompiledJob,
  routed: Routed,
  protection: Protection,
): (conductor: string) => readonly Exposure[] {
  const ceilings = sourceCeilings(compiled);
  const own = (id: string): readonly Exposure[] =>
    (protection.guards.get(id) ?? []).map((guard) => ({
      source: guard.source,
      sourceKind: guard.sourceKind,
      cut: guard.cut,
      sumA: guard.sumA,
      largestA: ceilings.get(guard.source) ?? ceilings.get(partOf(guard.source)) ?? 0,
      through: null,
      at: null,
      via: guard.via,
      positions: guard.positions,
      unfusedMm: guard.unfusedMm,
    }));
  const isFed = (id: string): boolean => own(id).some(({ via }) => via === null);
  const upstream = touchedUpstream(compiled, isFed);
  const fed = [...elementIds(compiled)].filter(isFed).sort();
  const beside = (id: string): readonly string[] => {
    if (id === FRAME) return fed;
    const wires = new Set((routed.stretchesOfWire.get(id) ?? []).flatMap((one) => one.wires));
    wires.delete(id);
    return [...wires].filter(isFed).sort();
  };
  return (id) => {
    const touched = upstream(id).flatMap((at) =>
      beside(at).flatMap((through) =>
        own(through)
          .filter(({ via }) => via === null)
          .map((exposure) => ({ ...exposure, through, at })),
      ),
    );
    const once = new Map<string, Exposure>();
    for (const exposure of [...own(id), ...touched]) {
      const key = `${exposure.source} ${exposure.cut.join("+")}`;
      if (!once.has(key)) once.set(key, exposure);
    }
    return [...once.values()];
  };
}

const elementIds = ({ elementOfConductor }: CompiledJob) => elementOfConductor.keys();

const partOf = (source: string): string => source.split(".")[0]!;

/** The most each source can give, A: a battery its volts over its own resistance, a generator its ceiling at any speed. */
export function sourceCeilings(compiled: CompiledJob): ReadonlyMap<string, number> {
  const { job, conditions, jobNetwork } = compiled;
  const ceilings = new Map<string, number>();
  for (const part of presentParts(job)) {
    if (part.kind !== "battery") continue;
    const { emfV, internalOhm } = batterySource(part, "full", conditions.ambientC);
    ceilings.set(part.id, (Math.max(emfV, highestSetV(job)) * 1) / internalOhm);
  }
  for (const { generator, line, leads, regulator, positive } of jobNetwork.sources) {
    if (line === null) continue;
    const ceilingA = line.emfPerRpmRatio / line.reactancePerRpmRatio;
    ceilings.set(generator, ceilingA);
    if (regulator !== null) ceilings.set(regulator, ceilingA);
    for (const lead of leads) ceilings.set(lead.replace(/~$/, ""), ceilingA);
    ceilings.set(positive.replace(/~$/, ""), ceilingA);
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

/** Where two speeds do not fix a generator's line, its ceiling is taken this much above the largest output stated. */
const UNKNOWN_LINE_RATIO = 1.5;

function highestSetV(job: Job): number {
  const sets = presentParts(job).flatMap((part) =>
    part.kind === "regulator" ? [(part as PartOf<"regulator">).setV.value] : [],
  );
  return Math.max(0, ...sets);
}
