import { presentParts } from "../job/index.ts";
import { batterySource, fuseBand, fuseOpensS, type QuickState } from "../operate/index.ts";
import { lampInrush } from "../size/index.ts";
import { figure } from "../tables/index.ts";
import { fusesOf } from "./allWires.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { InUse, RatedPlace, UsedFuse } from "./proveResult.ts";

/**
 * What everything else than wire carries with nothing broken, at its largest over every combination of every group: contacts and
 * connector cavities against their ratings, fuses against the share of their rating they are asked to carry for long, and the
 * surge of cold lamps switched on together against the shortest time the fuse may open in.
 */
export function inUse(plan: ProofPlan, tallies: CurrentTallies): InUse {
  return {
    contacts: contactRows(plan, tallies),
    cavities: cavityRows(plan, tallies),
    fuses: fuseRows(plan, tallies),
  };
}

function contactRows({ input, solver }: ProofPlan, tallies: CurrentTallies): RatedPlace[] {
  const stated = new Map(
    presentParts(input.job).flatMap((part) =>
      "contactRatingA" in part && part.contactRatingA !== undefined
        ? [[part.id, part.contactRatingA.value] as const]
        : [],
    ),
  );
  return solver.compiled.jobNetwork.elements.flatMap(({ kind, of }, k): RatedPlace[] => {
    const ratingA = stated.get(of.split(":")[0]!);
    if (kind !== "contact" || !of.includes(":") || ratingA === undefined) return [];
    return [row(of, k, ratingA, tallies)];
  });
}

function cavityRows({ input, solver }: ProofPlan, tallies: CurrentTallies): RatedPlace[] {
  const kinds = new Map(input.job.connectors.map(({ id, kind }) => [id, kind]));
  return solver.compiled.jobNetwork.elements.flatMap(({ kind, of }, k): RatedPlace[] => {
    const connector = kinds.get(of.split(".")[0]!);
    if (kind !== "joint" || connector === undefined) return [];
    return [row(of, k, figure("connectorClasses", connector, "maxA").value, tallies)];
  });
}

const row = (
  place: string,
  element: number,
  ratingA: number,
  { lastingA, lastingState }: CurrentTallies,
): RatedPlace => ({
  place,
  currentA: lastingA[element]!,
  ratingA,
  state: stateOf(lastingState[element]?.state),
});

const stateOf = (state: QuickState | undefined): RatedPlace["state"] =>
  state === undefined ? null : { ...state.positions, engine: state.engine?.mode ?? "stopped" };

function fuseRows({ input, solver }: ProofPlan, tallies: CurrentTallies): UsedFuse[] {
  const { elements } = solver.compiled.jobNetwork;
  const filaments = elements.flatMap(({ kind }, k) => (kind === "filament" ? [k] : []));
  return [...fusesOf(input.job).values()]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .map((fuse): UsedFuse => {
      const element = elements.findIndex(({ kind, of }) => kind === "fuse" && of === fuse.id);
      const currentA = tallies.lastingA[element]!;
      const met = tallies.lastingState[element];
      // Lamps of the state in which it carries most, no more than it carries.
      const lampsA = met == null ? 0 : lampCurrentA(solver.solve(met.state).elementA, filaments);
      const surge = lampInrush({
        runningA: Math.min(currentA, lampsA),
        ...loopOf(input.job, solver),
      });
      const { smallestA } = fuseBand(fuse);
      const forLongA = met == null ? 0 : forLong(solver, met.state, element, currentA);
      const opensMinS = fuseOpensS(fuse, surge.peakA).minS;
      return {
        fuse: fuse.id,
        currentA,
        carriesA: smallestA,
        loadRatio: forLongA / smallestA,
        surgeA: surge.peakA,
        surgeA2s: surge.i2tA2s,
        opensMinA2s: opensMinS === null || opensMinS === 0 ? null : surge.peakA ** 2 * opensMinS,
        state: stateOf(met?.state),
      };
    });
}

/**
 * What is left of a current when every button held by hand is let go, A: nobody sounds the horn for long. In the proportion of the
 * battery alone, because the largest may have been met at the regulator's volts.
 */
function forLong(
  { compiled, solve }: ProofPlan["solver"],
  state: QuickState,
  element: number,
  currentA: number,
): number {
  const held = new Set(
    compiled.job.parts.flatMap((part) =>
      part.kind === "switch" && part.momentary && part.driven === "hand" ? [part.id] : [],
    ),
  );
  const kept = Object.entries(state.positions ?? {}).filter(([id]) => !held.has(id));
  if (kept.length === Object.keys(state.positions ?? {}).length) return currentA;
  const letGoA = Math.abs(
    solve({ ...state, positions: Object.fromEntries(kept) }).elementA[element]!,
  );
  const allA = Math.abs(solve(state).elementA[element]!);
  return allA === 0 ? currentA : (currentA * letGoA) / allA;
}

const lampCurrentA = (elementA: Float64Array, filaments: readonly number[]): number =>
  filaments.reduce((sum, k) => sum + Math.abs(elementA[k]!), 0);

/** Nothing surges above what the battery gives into a short. */
function loopOf(
  job: ProofPlan["input"]["job"],
  { compiled }: ProofPlan["solver"],
): { supplyV?: number; loopOhm?: number } {
  const battery = presentParts(job).find((part) => part.kind === "battery");
  if (battery?.kind !== "battery") return {};
  const { emfV, internalOhm } = batterySource(battery, "full", compiled.conditions.ambientC);
  return { supplyV: emfV, loopOhm: internalOhm };
}
