import { DEAD_SHORT_OHM } from "../operate/index.ts";
import { ratingOf } from "../size/index.ts";
import { survivalOfWires, type WireSurvival } from "./allWires.ts";
import { bridgedCurrentA } from "./bridgedCurrentA.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ProvedWire } from "./proveResult.ts";
import { weakestShort, weakSolver } from "./weakShorts.ts";
import type { JudgedWire } from "./wireFindings.ts";
import type { SurvivalAnswer } from "./wireSurvival.ts";
import { isAlternating, worstShort } from "./worstShort.ts";

export interface ProvedWires {
  readonly judged: readonly JudgedWire[];
  readonly rows: readonly ProvedWire[];
}

/** The wires named: survival theorem, the fault that shows the tightest of it, and the same on a weak battery. */
export function provedWires(
  plan: ProofPlan,
  tallies: CurrentTallies,
  wires: readonly string[],
): ProvedWires {
  const weak = weakSolver(plan);
  const judged = survivalOfWires(plan, tallies.lastingA, wires).map((found): JudgedWire => {
    const survival = withoutHarmlessBridges(plan, tallies, found);
    return { survival, worst: worstShort(plan, tallies, survival) };
  });
  return { judged, rows: judged.map((one) => rowOf(plan, tallies, one, weak)) };
}

/**
 * A wire that an unfused source reaches only when a load fails bridged, and only beside a far better way home (an engine earth beside a
 * neutral switch): no rule tells how the current parts, so it is solved. What carries no more than the load's own rating allows
 * is no exposure.
 */
function withoutHarmlessBridges(
  plan: ProofPlan,
  tallies: CurrentTallies,
  survival: WireSurvival,
): WireSurvival {
  const answers = survival.answers.filter(
    (answer) => !isHarmless(plan, tallies, survival.wire, answer),
  );
  if (answers.length === survival.answers.length) return survival;
  const { ruling = "saved", leansOnMemory = false } = answers[0] ?? {};
  return { ...survival, answers, ruling, leansOnMemory };
}

function isHarmless(
  { solver, input, states }: ProofPlan,
  tallies: CurrentTallies,
  wire: string,
  { exposure, ruling, placed }: SurvivalAnswer,
): boolean {
  // A touch of a lead before the first fuse is that lead's own matter: it is told there, and is either kept from chafing or a stop.
  if (ruling === "unfused" && exposure.through !== null) return true;
  if (ruling !== "unfused") return false;
  const bridged = solver.loads.find((one) => one.load.ref === exposure.via);
  if (bridged === undefined) return false;
  const element = solver.compiled.elementOfConductor.get(wire)!;
  const [a, b] = bridged.load.pins;
  const node = solver.compiled.jobNetwork.nodes.indexOf.get(a)!;
  const liveV = tallies.nodeV[node]! / 2;
  const short = [{ a, b, ohm: DEAD_SHORT_OHM }];
  // Other groups feed the load in none of their combinations or in all: its own hold every way.
  const fed = states.flatMap(({ light, engine, group }) =>
    engine.mode !== "running" &&
    group.elements.has(bridged.element) &&
    Math.abs(solver.solve(light).nodeV[node]!) > liveV
      ? [light]
      : [],
  );
  const largestA = Math.max(
    0,
    ...fed.map((state) => bridgedCurrentA(solver, state, short, element)),
  );
  const { makeId, rated } = input.conductors.get(wire)!;
  const bundle = { wireCount: 1, loadedCount: 1 };
  const carriesA = rated?.value ?? ratingOf({ makeId, ambientC: placed.ambientC, bundle }).currentA;
  return fed.length > 0 && largestA <= carriesA;
}

function rowOf(
  plan: ProofPlan,
  { lastingA }: CurrentTallies,
  { survival, worst }: JudgedWire,
  weak: ReturnType<typeof weakSolver>,
): ProvedWire {
  const answer = survival.answers[0];
  const bound = answer?.worst ?? null;
  const { state: _, reproduce = null, ...shown } = worst ?? { state: null };
  return {
    wire: survival.wire,
    faultsCount: survival.answers.length,
    lastingA: lastingA[plan.solver.compiled.elementOfConductor.get(survival.wire)!]!,
    worst: worst === null ? null : (shown as ProvedWire["worst"]),
    margin: bound === null ? null : bound.marginK,
    bound:
      bound === null
        ? null
        : {
            currentA: bound.currentA,
            timeS: bound.timeS,
            peakC: bound.peakC,
            limitC: bound.limitC,
            duration: bound.duration,
          },
    weakest:
      worst === null || answer?.exposure.sourceKind !== "battery"
        ? null
        : weakestShort(plan, weak, survival.wire, worst),
    verdict: answer === undefined ? "not-exposed" : survival.ruling,
    why: answer?.why ?? whyNoShort(plan, survival, worst),
    reproduce,
  };
}

function whyNoShort(
  plan: ProofPlan,
  { wire, answers }: WireSurvival,
  worst: JudgedWire["worst"],
): string | null {
  if (worst !== null) return null;
  if (answers.length === 0) return "no source reaches it";
  if (isAlternating(plan, wire))
    return "on an alternating net; the bound at the winding's ceiling holds";
  return plan.input.conductors.get(wire)?.kind === "flyLead"
    ? "its inner end lies inside its part; the bound over every current holds"
    : "no state feeds it; the bound over every current holds";
}
