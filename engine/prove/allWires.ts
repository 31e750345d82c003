import { type PartOf, presentParts } from "../job/index.ts";
import { ratingOf } from "../size/index.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { Exposure } from "./wireExposures.ts";
import { type PlacedLump, wireLumps } from "./wireLumps.ts";
import { type Ruling, type SurvivalAnswer, survivalOf } from "./wireSurvival.ts";

export interface WireSurvival {
  readonly wire: string;
  readonly ruling: Ruling;
  readonly leansOnMemory: boolean;
  /** Every exposure in its worst place, the tightest first. */
  readonly answers: readonly SurvivalAnswer[];
}

const SEVERITY: Readonly<Record<Ruling, number>> = {
  saved: 0,
  mend: 1,
  "not-proven": 2,
  stop: 3,
  unfused: 4,
};

/** A wire with this share of its single rating counts as loaded in its bundle. */
const LOADED_RATIO = 0.3;

/** The survival theorem over all conductors named, at the largest lasting currents found. */
export function survivalOfWires(
  plan: ProofPlan,
  lastingA: Float64Array,
  wires: readonly string[],
): readonly WireSurvival[] {
  const { job, conductors, routed } = plan.input;
  const { compiled } = plan.solver;
  const currentA = (id: string): number => lastingA[compiled.elementOfConductor.get(id)!] ?? 0;
  const lumpsOf = wireLumps(conductors, routed, currentA);
  const carriesOf = deratedRating(plan, currentA);
  const fuses = fusesOf(job);
  const known = new Map<string, SurvivalAnswer>();
  return wires.map((wire) => {
    const conductor = conductors.get(wire)!;
    const answers = plan.exposuresOf(wire).map((exposure) => {
      const loadA = exposure.through === null ? 0 : currentA(wire);
      const besideA = loadA + exposure.besideA;
      const inPlaces = lumpsOf(wire).map((placed) => {
        const key = `${memoKey(conductor.makeId, exposure, placed)} ${besideA}`;
        const answer = known.get(key);
        if (answer !== undefined) return { ...answer, exposure, placed };
        const made = survivalOf(conductor, exposure, placed, {
          fuses,
          besideA,
          carriesA: () => carriesOf(wire, placed),
        });
        known.set(key, made);
        return made;
      });
      return inPlaces.reduce(worse);
    });
    const sorted = [...answers].sort((a, b) => (worse(a, b) === a ? -1 : 1));
    return {
      wire,
      ruling: sorted[0]?.ruling ?? "saved",
      leansOnMemory: sorted[0]?.leansOnMemory ?? false,
      answers: sorted,
    };
  });
}

export function fusesOf(job: ProofPlan["input"]["job"]): ReadonlyMap<string, PartOf<"fuse">> {
  return new Map(
    presentParts(job).flatMap((part) => (part.kind === "fuse" ? [[part.id, part] as const] : [])),
  );
}

function memoKey(makeId: string, { cut, source, largestA }: Exposure, placed: PlacedLump): string {
  const lies = placed.stretch ?? `alone ${placed.ambientC} ${placed.startC}`;
  return `${makeId} ${lies} ${placed.startC} ${cut.join("+")} ${cut.length === 0 ? source : largestA}`;
}

function worse(one: SurvivalAnswer, other: SurvivalAnswer): SurvivalAnswer {
  const by = SEVERITY[one.ruling] - SEVERITY[other.ruling];
  if (by !== 0) return by > 0 ? one : other;
  const apartK = (one.worst?.marginK ?? 0) - (other.worst?.marginK ?? 0);
  if (Math.abs(apartK) > SAME_K) return apartK < 0 ? one : other;
  return plainness(one) <= plainness(other) ? one : other;
}

/** Margins nearer than this are told by the plainer exposure, K: the battery before a generator, touching nothing else. */
const SAME_K = 2.5;

function plainness({ exposure }: SurvivalAnswer): number {
  const indirect = (exposure.through === null ? 0 : 2) + (exposure.via === null ? 0 : 1);
  return indirect + (exposure.sourceKind === "battery" ? 0 : 4);
}

/** What a wire may carry for ever in a place by the published ratings with their factors, A. */
function deratedRating(plan: ProofPlan, currentA: (id: string) => number) {
  const { conductors, routed } = plan.input;
  const stretches = new Map(routed.stretches.map((stretch) => [stretch.id, stretch]));
  const isLoaded = (id: string): boolean =>
    currentA(id) > LOADED_RATIO * (conductors.get(id)?.rated?.value ?? 0);
  const known = new Map<string, number>();
  return (wire: string, { stretch, ambientC }: PlacedLump): number => {
    const { makeId } = conductors.get(wire)!;
    const others = (stretch === null ? [] : stretches.get(stretch)!.wires).filter(
      (one) => one !== wire,
    );
    const bundle = {
      wireCount: others.length + 1,
      loadedCount: others.filter(isLoaded).length + 1,
    };
    const key = `${makeId} ${ambientC} ${bundle.wireCount} ${bundle.loadedCount}`;
    const ratedA = known.get(key) ?? ratingOf({ makeId, ambientC, bundle }).currentA;
    known.set(key, ratedA);
    return ratedA;
  };
}
