import type { CompiledJob } from "../operate/index.ts";
import type { Guard, Protection } from "../protect/index.ts";
import type { Routed } from "../route/index.ts";
import { besideGenerators } from "./besideGenerators.ts";
import { sourceCeilings } from "./sourceCeilings.ts";
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
  /** What running generators can add that passes no fuse of the set, A. */
  readonly besideA: number;
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
  const generators = besideGenerators(compiled);
  const excited = (id: string): readonly Exposure[] =>
    generators.exciters
      .filter(({ conductors }) => conductors.has(id))
      .map(({ pin }) => excitedBy(pin.replace(/~$/, ""), ceilings));
  const guarded = (id: string): readonly Exposure[] =>
    (protection.guards.get(id) ?? []).map(({ ceilingA: _, pathCount: __, ...guard }) => ({
      ...guard,
      largestA: ceilings.get(guard.source) ?? ceilings.get(partOf(guard.source)) ?? 0,
      besideA: guard.sourceKind === "battery" ? generators.inConductor(id, guard.cut) : 0,
      through: null,
      at: null,
    }));
  const known = new Map<string, readonly Exposure[]>();
  const own = (id: string): readonly Exposure[] => {
    const list = known.get(id) ?? [...guarded(id), ...excited(id)];
    known.set(id, list);
    return list;
  };
  const isFed = (id: string): boolean => own(id).some(({ via }) => via === null);
  const upstream = touchedUpstream(compiled, isFed);
  const fed = [...elementIds(compiled)].filter(isFed).sort();
  const beside = (id: string): readonly string[] => {
    if (id === FRAME) return fed;
    const wires = new Set((routed.stretchesOfWire.get(id) ?? []).flatMap((one) => one.wires));
    wires.delete(id);
    return [...wires].filter(isFed).sort();
  };
  const found = new Map<string, readonly Exposure[]>();
  return (id) => {
    const before = found.get(id);
    if (before !== undefined) return before;
    const touched = upstream(id).flatMap((at) =>
      beside(at).flatMap((through) =>
        own(through)
          .filter(({ via }) => via === null)
          .map((exposure) => ({
            ...exposure,
            besideA:
              exposure.sourceKind === "battery" ? generators.inTouch(through, exposure.cut) : 0,
            through,
            at,
          })),
      ),
    );
    const once = new Map<string, Exposure>();
    for (const exposure of [...own(id), ...touched]) {
      const key = `${exposure.source} ${exposure.cut.join("+")} ${exposure.through === null}`;
      const before = once.get(key);
      if (before === undefined || before.besideA < exposure.besideA) once.set(key, exposure);
    }
    const list = [...once.values()];
    found.set(id, list);
    return list;
  };
}

const elementIds = ({ elementOfConductor }: CompiledJob) => elementOfConductor.keys();

const partOf = (source: string): string => source.split(".")[0]!;

/** The terminal an alternator feeds its own field at: fed by the same windings, so it gives no more than they do; no fuse is counted on. */
const excitedBy = (pin: string, ceilings: ReadonlyMap<string, number>): Exposure => ({
  source: pin,
  sourceKind: "generator",
  cut: [],
  sumA: null,
  largestA: ceilings.get(pin) ?? 0,
  besideA: 0,
  through: null,
  at: null,
  via: null,
  positions: {},
  unfusedMm: null,
});
