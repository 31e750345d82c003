import { transientHistory } from "../heat/index.ts";
import { fuseOpensS, type QuickState } from "../operate/index.ts";
import { fusesOf, type WireSurvival } from "./allWires.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { shortPlan } from "./shortPlan.ts";
import type { EngineState } from "./stateSpace.ts";
import type { PlacedLump } from "./wireLumps.ts";

export interface FaultComparison {
  readonly pairCount: number;
  readonly wireCheckCount: number;
  /** Wires called saved that a fault, followed to its end, heats beyond the limit of its duration. */
  readonly disagreements: readonly string[];
}

interface Step {
  readonly durationS: number;
  readonly elementA: Float64Array;
}

/** Long enough that every wire has settled, s. */
const SETTLED_S = 1e6;

/**
 * Draws states over the full product and shorts over all places and resistances, follows each to its end (the fuse that opens first
 * by its longest time opens, the machine is solved again, until none has to), and holds every wire that was called saved
 * against the limits by duration with the currents that really flowed.
 */
export function comparedWithSurvival(
  plan: ProofPlan,
  survivals: readonly WireSurvival[],
  engine: EngineState,
  draw: { readonly pairCount: number; readonly random: () => number },
): FaultComparison {
  const { solver, space } = plan;
  const shorts = shortPlan(plan);
  const { names } = solver.compiled.jobNetwork.nodes;
  const unguarded = unguardedNames(plan, survivals);
  const pick = <T>(list: readonly T[]): T => list[Math.floor(draw.random() * list.length)]!;
  const disagreements: string[] = [];
  let wireCheckCount = 0;
  let pairCount = 0;
  while (pairCount < draw.pairCount) {
    const full = Object.fromEntries(
      space.variables.map(({ id, positions }) => [id, pick(positions)]),
    );
    const [a, b] = pick(shorts.pairs).map((node) => names[node]!) as [string, string];
    const ohm = pick(shorts.shortOhm);
    if (space.completed(full, engine) === null || a.endsWith("~") || b.endsWith("~")) continue;
    if (unguarded.has(a) || unguarded.has(b)) continue;
    pairCount++;
    const state: QuickState = { ...space.quick(full, engine), short: [{ a, b, ohm }] };
    const steps = followed(plan, state);
    for (const survival of survivals) {
      const worst = hottest(plan, survival, steps);
      if (worst === null) continue;
      wireCheckCount++;
      if (worst.overK > 0)
        disagreements.push(
          `${survival.wire} over by ${worst.overK} K: ${a}=${b}:${ohm} ${JSON.stringify(full)}`,
        );
    }
  }
  return { pairCount, wireCheckCount, disagreements };
}

/**
 * Ends of the conductors the proof itself says no fuse guards (leads before the first fuse, starter cables): a short there is opened by
 * nothing and takes what leads it home along, which the proof says of them by name. They are no part of the claim that is tested.
 */
function unguardedNames(
  { input }: ProofPlan,
  survivals: readonly WireSurvival[],
): ReadonlySet<string> {
  return new Set(
    survivals
      .filter(({ ruling }) => ruling === "unfused")
      .flatMap(({ wire }) => {
        const { from, to } = input.conductors.get(wire)!;
        return [from, to];
      }),
  );
}

/** A fault until nothing opens any more. */
export function followed({ solver, input }: ProofPlan, state: QuickState): readonly Step[] {
  const fuses = [...fusesOf(input.job).values()];
  const { elements } = solver.compiled.jobNetwork;
  const place = new Map(
    elements.flatMap(({ kind, of }, k) => (kind === "fuse" ? [[of, k] as const] : [])),
  );
  const steps: Step[] = [];
  let open: readonly string[] = [];
  for (;;) {
    const { elementA } = solver.compiled.solve({ ...state, open });
    const opening = fuses
      .filter(({ id }) => !open.includes(id))
      .map((fuse) => ({
        id: fuse.id,
        timeS: fuseOpensS(fuse, elementA[place.get(fuse.id)!]!).maxS,
      }))
      .filter((one): one is { id: string; timeS: number } => one.timeS !== null)
      .sort((a, b) => a.timeS - b.timeS)[0];
    steps.push({ durationS: opening?.timeS ?? SETTLED_S, elementA });
    if (opening === undefined) return steps;
    open = [...open, opening.id];
  }
}

/** How far over its limit a saved wire gets in its worst place; null where it carries less than its fuses' rating throughout. */
function hottest(
  { solver }: ProofPlan,
  { wire, ruling, answers }: WireSurvival,
  steps: readonly Step[],
): { readonly overK: number } | null {
  const element = solver.compiled.elementOfConductor.get(wire)!;
  const leastA = Math.min(...answers.map(({ exposure }) => exposure.sumA ?? Infinity));
  const currents = steps.map(({ elementA }) => Math.abs(elementA[element]!));
  if (ruling !== "saved" || answers.length === 0 || !(Math.max(...currents) > leastA)) return null;
  const places = new Map(answers.map(({ placed }) => [placed.stretch, placed]));
  return {
    overK: Math.max(...[...places.values()].map((placed) => overLimitK(placed, steps, currents))),
  };
}

/** A wire that carries less than this share of what it carried at first cools: its peak is behind it. */
const COOLS_BELOW_RATIO = 0.1;

function overLimitK(
  placed: PlacedLump,
  steps: readonly Step[],
  currents: readonly number[],
): number {
  const { limits, lump, startC } = placed;
  const first = Math.max(...currents);
  const live = currents.findLastIndex((currentA) => currentA > COOLS_BELOW_RATIO * first) + 1;
  const history = transientHistory(
    lump,
    startC!,
    steps.slice(0, live).map(({ durationS }, k) => ({ durationS, currentA: currents[k]! })),
  );
  const isEndless = live === steps.length;
  const timed = isEndless ? steps.slice(0, -1) : steps.slice(0, live);
  const timedS = timed.reduce((sum, { durationS }) => sum + durationS, 0);
  const peakC = Math.max(startC!, ...history.stepEndsC.slice(0, timed.length));
  const limitC =
    timedS <= limits.shortS
      ? limits.shortC
      : timedS <= limits.longS
        ? limits.longC
        : limits.foreverC;
  const endC = history.overCeiling ? Infinity : history.endC;
  return Math.max(peakC - limitC, isEndless ? endC - limits.foreverC : -Infinity);
}
