import { conditionsOf, type OperateRequest } from "../operate/index.ts";
import { survivalOfWires } from "./allWires.ts";
import { isStarting, starterElements } from "./currentTallies.ts";
import type { ProofOptions } from "./proofInput.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { proofSolver } from "./proofSolver.ts";
import type { MergedFirst } from "./provePart.ts";
import type { Tolerance } from "./proveResult.ts";
import { COLD_C } from "./weakShorts.ts";
import type { JudgedWire } from "./wireFindings.ts";

/** What readings may be off by, all towards heat: air, and largest lasting currents (battery, lamps and lengths together). Our own bands. */
const WARMER_K = 10;
const MORE_CURRENT_RATIO = 1.1;
/** A length somebody estimated, or nobody measured, may be this much longer or shorter. Our own band. */
const LENGTH_BAND_RATIO = 0.2;
/** Wires with the least margin are put to the test; the others are further away. */
const WIRE_COUNT = 24;

/** Corners at which loads must still do what they do: battery, lamp law, and contacts with years on them. */
const CORNERS: readonly Corner[] = [
  { name: "battery weak and cold", request: { battery: "weak", ambientC: COLD_C } },
  { name: "contacts aged", request: { aged: true } },
  {
    name: "contacts aged, battery weak and cold",
    request: { aged: true, battery: "weak", ambientC: COLD_C },
  },
  { name: "lamps as fixed resistances", request: { lampExponent: 1 } },
  { name: "estimated lengths longer", request: {}, lengthRatio: 1 + LENGTH_BAND_RATIO },
  { name: "estimated lengths shorter", request: {}, lengthRatio: 1 - LENGTH_BAND_RATIO },
];

interface Corner {
  readonly name: string;
  readonly request: OperateRequest;
  readonly lengthRatio?: number;
}

/**
 * How much of the verdict hangs on readings, by intervals. A conductor's temperature rises with the air, with its own current and with
 * its neighbours', so the hot corner of the bands bounds every point within them; the survival theorem is put to that corner.
 * Lights and relays have no such law: the corners themselves are solved in every state of every group.
 */
export function toleranceOf(
  plan: ProofPlan,
  { states, tallies }: Pick<MergedFirst, "states" | "tallies">,
  judged: readonly JudgedWire[],
  options: ProofOptions,
): Tolerance {
  const still = states.filter(({ engine }) => engine === "stopped");
  const corners = CORNERS.map((corner) => ({ ...corner, ...cornerOf(plan, corner, still) }));
  const loads = corners.flatMap(({ name, changed }) => changed.map((ref) => `${ref}: ${name}`));
  const hottestA = tallies.lastingA.map((currentA, k) =>
    Math.max(currentA * MORE_CURRENT_RATIO, ...corners.map(({ largestA }) => largestA[k]!)),
  );
  const hot = hotCorner(plan, hottestA, judged);
  return {
    method:
      "interval: the hot corner of the bands bounds heat; corners of battery, lamps, contacts and estimated lengths solved",
    seed: options.seed ?? 1,
    samples: 1 + CORNERS.length,
    worstMargin: hot.worstMargin,
    lengthBandPercent: 100 * LENGTH_BAND_RATIO,
    moreCurrentRatio: moreCurrent(hottestA, tallies.lastingA),
    verdictChanges: [...hot.changed, ...loads.sort()],
  };
}

function hotCorner(
  plan: ProofPlan,
  lastingA: Float64Array,
  judged: readonly JudgedWire[],
): { readonly worstMargin: number | null; readonly changed: readonly string[] } {
  const marginOf = ({ survival }: JudgedWire): number =>
    survival.answers[0]?.worst?.marginK ?? Infinity;
  const tight = [...judged]
    .filter((one) => marginOf(one) < Infinity)
    .sort((a, b) => marginOf(a) - marginOf(b))
    .slice(0, WIRE_COUNT);
  const before = new Map(tight.map(({ survival }) => [survival.wire, survival]));
  let worstMargin: number | null = null;
  const changed: string[] = [];
  for (const after of survivalOfWires(warmer(plan), lastingA, [...before.keys()])) {
    const known = before.get(after.wire)!;
    // A bridge found harmless stays so: it is no question of warmth.
    const kept = after.answers.filter((one) =>
      known.answers.some(
        ({ exposure }) =>
          exposure.source === one.exposure.source &&
          exposure.cut.join() === one.exposure.cut.join(),
      ),
    );
    const least = kept[0];
    const marginK = least?.worst?.marginK ?? null;
    if (marginK !== null && (worstMargin === null || marginK < worstMargin)) worstMargin = marginK;
    if (least !== undefined && least.ruling !== known.ruling) changed.push(after.wire);
  }
  return { worstMargin, changed: changed.sort() };
}

function warmer(plan: ProofPlan): ProofPlan {
  const { routed, conductors } = plan.input;
  const hotter = <T extends { readonly ambientC: number }>(one: T): T => ({
    ...one,
    ambientC: one.ambientC + WARMER_K,
  });
  return {
    ...plan,
    input: {
      ...plan.input,
      routed: {
        ...routed,
        stretches: routed.stretches.map(hotter),
        stretchesOfWire: new Map(
          [...routed.stretchesOfWire].map(([wire, list]) => [wire, list.map(hotter)]),
        ),
      },
      conductors: new Map([...conductors].map(([id, one]) => [id, hotter(one)])),
    },
  };
}

interface Solved {
  /** Loads that are lit at the usual conditions and not at the corner, or the other way round, in any state of their own group. */
  readonly changed: readonly string[];
  /** Largest current of every element over the states solved at the corner. */
  readonly largestA: Float64Array;
}

function cornerOf(plan: ProofPlan, corner: Corner, still: MergedFirst["states"]): Solved {
  const { solver, input } = plan;
  const machine =
    corner.lengthRatio === undefined
      ? input
      : { ...input, conductors: longer(input, corner.lengthRatio) };
  const there = proofSolver(machine, {
    conditions: conditionsOf(input.job, corner.request),
    tally: solver.tally,
  });
  const changed = new Set<string>();
  const starters = starterElements(there.compiled);
  const largestA = new Float64Array(there.compiled.jobNetwork.elements.length);
  for (const { stateIndex, lit } of still) {
    const { group, light } = plan.states[stateIndex]!;
    const usual = new Set(lit);
    const solution = there.solve(light);
    const shares = there.shares(light, solution);
    if (!isStarting(solution.elementA, starters)) {
      largestA.forEach((a, k) => {
        largestA[k] = Math.max(a, Math.abs(solution.elementA[k]!));
      });
    }
    solver.loads.forEach(({ element, load, alternating }, k) => {
      if (alternating || !group.elements.has(element)) return;
      if (usual.has(k) !== shares[k]! >= solver.litRatio) changed.add(load.ref);
    });
  }
  return { changed: [...changed].sort(), largestA };
}

/** Conductors whose length nobody measured, by a ratio longer; a fly lead is as its part was stated. */
function longer({ conductors, routed }: ProofPlan["input"], ratio: number) {
  const isKnown = (id: string): boolean => {
    const basis = routed.wires.get(id)?.basis;
    return basis === "measured" || basis === "stated";
  };
  return new Map(
    [...conductors].map(([id, one]) => [
      id,
      one.kind === "flyLead" || isKnown(id) || one.lengthMm === null
        ? one
        : { ...one, lengthMm: one.lengthMm * ratio },
    ]),
  );
}

/** Currents under this say nothing of a ratio, A. */
const LEAST_A = 0.5;

function moreCurrent(thereA: Float64Array, lastingA: Float64Array): number {
  return thereA.reduce(
    (most, a, k) => (lastingA[k]! >= LEAST_A ? Math.max(most, a / lastingA[k]!) : most),
    1,
  );
}
