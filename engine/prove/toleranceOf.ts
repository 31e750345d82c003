import { conditionsOf, type OperateRequest } from "../operate/index.ts";
import { survivalOfWires } from "./allWires.ts";
import type { CurrentTallies } from "./currentTallies.ts";
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
/** Wires with the least margin are put to the test; the others are further away. */
const WIRE_COUNT = 24;

/** Corners at which loads must still do what they do: battery, lamp law, and contacts with years on them. */
const CORNERS: readonly { readonly name: string; readonly request: OperateRequest }[] = [
  { name: "battery weak and cold", request: { battery: "weak", ambientC: COLD_C } },
  { name: "contacts aged", request: { aged: true } },
  {
    name: "contacts aged, battery weak and cold",
    request: { aged: true, battery: "weak", ambientC: COLD_C },
  },
  { name: "lamps as fixed resistances", request: { lampExponent: 1 } },
];

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
  const hot = hotCorner(plan, tallies, judged);
  const still = states.filter(({ engine }) => engine === "stopped");
  const loads = CORNERS.flatMap(({ name, request }) =>
    changedLoads(plan, request, still).map((ref) => `${ref}: ${name}`),
  );
  return {
    method:
      "interval: the hot corner of the bands bounds heat; corners of battery, lamps and contacts solved",
    seed: options.seed ?? 1,
    samples: 1 + CORNERS.length,
    worstMargin: hot.worstMargin,
    verdictChanges: [...hot.changed, ...loads.sort()],
  };
}

function hotCorner(
  plan: ProofPlan,
  tallies: CurrentTallies,
  judged: readonly JudgedWire[],
): { readonly worstMargin: number | null; readonly changed: readonly string[] } {
  const marginOf = ({ survival }: JudgedWire): number =>
    survival.answers[0]?.worst?.marginK ?? Infinity;
  const tight = [...judged]
    .filter((one) => marginOf(one) < Infinity)
    .sort((a, b) => marginOf(a) - marginOf(b))
    .slice(0, WIRE_COUNT);
  const before = new Map(tight.map(({ survival }) => [survival.wire, survival]));
  const lastingA = tallies.lastingA.map((currentA) => currentA * MORE_CURRENT_RATIO);
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

/** Loads that are lit at the usual conditions and not at the corner, or the other way round, in any state of their own group. */
function changedLoads(
  plan: ProofPlan,
  request: OperateRequest,
  still: MergedFirst["states"],
): readonly string[] {
  const { solver, input } = plan;
  const corner = proofSolver(input, {
    conditions: conditionsOf(input.job, request),
    tally: solver.tally,
  });
  const changed = new Set<string>();
  for (const { stateIndex, lit } of still) {
    const { group, light } = plan.states[stateIndex]!;
    const usual = new Set(lit);
    const there = corner.shares(light, corner.solve(light));
    solver.loads.forEach(({ element, load, alternating }, k) => {
      if (alternating || !group.elements.has(element)) return;
      if (usual.has(k) !== there[k]! >= solver.litRatio) changed.add(load.ref);
    });
  }
  return [...changed].sort();
}
