import { DEAD_SHORT_OHM } from "../operate/index.ts";
import { ratingOf } from "../size/index.ts";
import { survivalOfWires, type WireSurvival } from "./allWires.ts";
import { bridgedCurrents, raise } from "./bridgedCurrents.ts";
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
  if (wires.length === 0) return { judged: [], rows: [] };
  const weak = weakSolver(plan);
  const bridgeOf = bridgesOf(plan, tallies);
  const judged = survivalOfWires(plan, tallies.lastingA, wires).map((found): JudgedWire => {
    const survival = withoutHarmlessBridges(plan, bridgeOf, found);
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
  bridgeOf: BridgeOf,
  survival: WireSurvival,
): WireSurvival {
  const answers = survival.answers.filter(
    (answer) => !isHarmless(plan, bridgeOf, survival.wire, answer),
  );
  if (answers.length === survival.answers.length) return survival;
  const { ruling = "saved", leansOnMemory = false } = answers[0] ?? {};
  return { ...survival, answers, ruling, leansOnMemory };
}

function isHarmless(
  { solver, input }: ProofPlan,
  bridgeOf: BridgeOf,
  wire: string,
  { exposure, ruling, placed }: SurvivalAnswer,
): boolean {
  // A touch of a lead before the first fuse is that lead's own matter: it is told there, and is either kept from chafing or a stop.
  if (ruling === "unfused" && exposure.through !== null) return true;
  if (ruling !== "unfused") return false;
  const bridge = exposure.via === null ? null : bridgeOf(exposure.via);
  if (bridge === null || bridge.fedCount === 0) return false;
  const currentA = bridge.largestA[solver.compiled.elementOfConductor.get(wire)!]!;
  const { makeId, rated } = input.conductors.get(wire)!;
  const bundle = { wireCount: 1, loadedCount: 1 };
  const carriesA = rated?.value ?? ratingOf({ makeId, ambientC: placed.ambientC, bundle }).currentA;
  return currentA <= carriesA;
}

/** A load bridged in every state that feeds it: how many there are, and the largest current of every element in them. */
interface Bridge {
  readonly fedCount: number;
  readonly largestA: Float64Array;
}

/** Null where the load is none of the solver's. */
type BridgeOf = (load: string) => Bridge | null;

/** Bridged loads, each solved once for all the wires that ask. */
function bridgesOf(plan: ProofPlan, tallies: CurrentTallies): BridgeOf {
  const known = new Map<string, Bridge | null>();
  return (load) => {
    const bridge = known.has(load) ? known.get(load)! : bridged(plan, tallies, load);
    known.set(load, bridge);
    return bridge;
  };
}

function bridged({ solver, states }: ProofPlan, tallies: CurrentTallies, ref: string) {
  const found = solver.loads.find((one) => one.load.ref === ref);
  if (found === undefined) return null;
  const [a, b] = found.load.pins;
  const { nodes, elements } = solver.compiled.jobNetwork;
  const node = nodes.indexOf.get(a)!;
  const liveV = tallies.nodeV[node]! / 2;
  const short = [{ a, b, ohm: DEAD_SHORT_OHM }];
  const largestA = new Float64Array(elements.length);
  let fedCount = 0;
  // Other groups feed the load in none of their combinations or in all: its own hold every way.
  for (const { light, engine, group } of states) {
    if (engine.mode === "running" || !group.elements.has(found.element)) continue;
    const { nodeV, pulled } = solver.glance(light);
    if (!(Math.abs(nodeV[node]!) > liveV)) continue;
    fedCount++;
    raise(largestA, bridgedCurrents(solver, light, pulled, short));
  }
  return { fedCount, largestA };
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
