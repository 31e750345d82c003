import { loadsOf, type PartOf, presentParts } from "../job/index.ts";
import { type FuseReading, fuseReading } from "../protect/index.ts";
import { chooseFuse, type FuseChoice, lampInrush } from "../size/index.ts";
import { figure } from "../tables/index.ts";
import type { Design as WholeDesign } from "./judge.ts";

/** A design before its fuses are looked at. */
type Design = Omit<WholeDesign, "fuses">;

/** One fuse with everything the judges and the result ask of it. */
export interface FuseFacts {
  readonly fuse: PartOf<"fuse">;
  readonly reading: FuseReading;
  /** Conductors it alone guards from some source, sorted. */
  readonly protects: readonly string[];
  readonly weakestWire: string | null;
  /** What the weakest carries by its list, else by the heat model, A; null where it guards nothing. */
  readonly weakestA: number | null;
  /** Largest lasting current through it, A. */
  readonly worstLoadA: number;
  readonly loadRatio: number;
  /** Null where it guards no wire. */
  readonly choice: FuseChoice | null;
  readonly dies: readonly string[];
  readonly unfusedMm: number | null;
}

/** Types of fuse whose standard ratings are in tables/fuseStandardRatings. */
export const STANDARD_TYPE = {
  blade: "blade",
  mini: "mini",
  maxi: "maxi",
  "glass-6.3x32": "glass",
  "glass-5x20": "glass",
  "glass-british": "glass",
  torpedo: "torpedo",
  unknown: "blade",
} as const satisfies Record<PartOf<"fuse">["type"], string>;

/** Every fuse on the machine, by id. */
export function fuseFacts(design: Design): readonly FuseFacts[] {
  const guarded = guardedAlone(design);
  const filaments = filamentsA(design);
  const fuses = presentParts(design.job).filter((part) => part.kind === "fuse");
  return fuses
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((fuse) =>
      factsOf(design, filaments, { fuse, guarded: guarded.get(fuse.id) ?? new Map() }),
    );
}

/** What a conductor carries by its list; without a list by the heat model, A. */
export const listA = ({ ratings }: Design, conductor: string): number =>
  ratings.get(conductor)!.listA;

function factsOf(
  design: Design,
  filaments: ReadonlyMap<string, number>,
  of: { readonly fuse: PartOf<"fuse">; readonly guarded: ReadonlyMap<string, number | null> },
): FuseFacts {
  const { fuse, guarded } = of;
  const { job, worst, protection } = design;
  const protects = [...guarded.keys()].sort();
  const rated = protects.filter((id) => listA(design, id) > 0);
  const weakestWire = rated.reduce<string | null>(
    (least, id) => (least === null || listA(design, id) < listA(design, least) ? id : least),
    null,
  );
  const weakestA = weakestWire === null ? null : listA(design, weakestWire);
  const worstLoadA = worst.fuses.get(fuse.id)?.currentA ?? 0;
  const dies = protection.dies.get(fuse.id) ?? [];
  const decided = job.decisions.fuseLoadPercent;
  const usual = figure("protectionRules", "load-share-most", "value").value;
  const loadRatio = decided === undefined ? usual : decided / 100;
  const filamentA = dies.reduce((sum, load) => sum + (filaments.get(load) ?? 0), 0);
  const choice =
    weakestA === null
      ? null
      : chooseFuse({
          loadA: worstLoadA,
          wireA: weakestA,
          loadRatio,
          type: STANDARD_TYPE[fuse.type],
          inrush: lampInrush({
            runningA: Math.min(worstLoadA, filamentA),
            ...loopOf(design, fuse.id),
          }),
        });
  const lengthsMm = [...guarded.values()].filter((mm) => mm !== null);
  return {
    fuse,
    reading: fuseReading(fuse),
    protects,
    weakestWire,
    weakestA,
    worstLoadA,
    loadRatio,
    choice,
    dies,
    unfusedMm: lengthsMm.length === 0 ? null : Math.min(...lengthsMm),
  };
}

/** The least a surge meets: full batteries with their resistance, and the fuse; wires and contacts only lower it further. */
function loopOf({ compiled }: Design, fuse: string) {
  const { elements } = compiled.jobNetwork;
  const full = elements.flatMap(({ law }) => (law.kind === "emf" ? [law] : []));
  if (full.length === 0) return {};
  const own = elements.find(({ kind, of }) => kind === "fuse" && of === fuse)?.law;
  return {
    supplyV: full.reduce((sumV, { emfV }) => sumV + Math.abs(emfV), 0),
    loopOhm:
      full.reduce((sumOhm, { internalOhm }) => sumOhm + internalOhm, 0) +
      (own?.kind === "ohm" ? own.ohm : 0),
  };
}

/** Fuse → conductors it alone cuts from some source, with the wire before it. */
function guardedAlone({ protection }: Design) {
  const guarded = new Map<string, Map<string, number | null>>();
  for (const [conductor, guards] of protection.guards) {
    for (const { cut, unfusedMm, sourceKind } of guards) {
      const [fuse, ...others] = cut;
      if (fuse === undefined || others.length > 0) continue;
      const own = guarded.get(fuse) ?? new Map<string, number | null>();
      guarded.set(fuse, own);
      if (sourceKind === "battery" || !own.has(conductor)) own.set(conductor, unfusedMm);
    }
  }
  return guarded;
}

/** Running current of every filament on the machine, A, by load. */
const filamentsA = ({ job }: Design): ReadonlyMap<string, number> =>
  new Map(
    loadsOf(job)
      .filter(({ kind, oneWay }) => kind === "filament" && !oneWay)
      .map(({ ref, ratedW, ratedV }) => [ref, (ratedW ?? 0) / (ratedV ?? 1)]),
  );
