import { peakBehindFuse } from "../heat/index.ts";
import { DEAD_SHORT_OHM, EARTH, fuseOpensS, type QuickState } from "../operate/index.ts";
import { fusesOf, type WireSurvival } from "./allWires.ts";
import type { CurrentTallies } from "./currentTallies.ts";
import { operateArguments } from "./operateArguments.ts";
import type { ProofPlan } from "./proofPlan.ts";
import type { ProofSolver } from "./proofSolver.ts";
import type { WorstShort } from "./proveResult.ts";
import { FRAME } from "./touchedUpstream.ts";
import { bandsOf, READING, type SurvivalAnswer } from "./wireSurvival.ts";

/** Secant steps towards a wanted current, and how near is near enough. */
const MOST_STEPS = 8;
const NEAR_RATIO = 1e-3;

interface Fault {
  readonly state: QuickState;
  readonly a: string;
  readonly b: string;
}

/**
 * The fault that shows a conductor's tightest exposure: a short where the source reaches its far end, its resistance chosen so that
 * the current that is worst by the survival theorem really flows (dead, where so much cannot). Solved in full; null where no
 * state feeds it.
 */
export function worstShort(
  plan: ProofPlan,
  tallies: CurrentTallies,
  survival: WireSurvival,
): WorstShort | null {
  const { solver, input } = plan;
  const answer = survival.answers[0];
  // The inner end of a fly lead lies inside its part: no short can be put there from outside.
  if (answer === undefined || input.conductors.get(survival.wire)?.kind === "flyLead") return null;
  if (isAlternating(plan, survival.wire)) return null;
  const element = solver.compiled.elementOfConductor.get(survival.wire)!;
  const currentAt = (fault: Fault, ohm: number): number => wireA(solver, element, fault, ohm);
  let best: { fault: Fault; currentA: number } | null = null;
  const { nets } = solver.compiled.nets;
  const isOnNet = (pin: string): boolean => nets.some(({ nodes }) => nodes.has(pin));
  for (const fault of faultsOf(plan, tallies, survival.wire, answer)) {
    if (isOnNet(fault.a) || isOnNet(fault.b)) continue;
    const currentA = currentAt(fault, DEAD_SHORT_OHM);
    if (best === null || currentA > best.currentA) best = { fault, currentA };
  }
  if (best === null || best.currentA <= 0) return null;
  const wantedA = answer.worst?.currentA ?? Number.POSITIVE_INFINITY;
  const isRunning = best.fault.state.engine?.mode === "running";
  const chosen =
    best.currentA <= wantedA || isRunning
      ? { ohm: DEAD_SHORT_OHM, currentA: best.currentA }
      : resistive((ohm) => currentAt(best!.fault, ohm), best.currentA, wantedA);
  const { a, b, state } = best.fault;
  const faulted = { ...state, short: [{ a, b, ohm: chosen.ohm }] };
  return {
    place: a,
    to: b,
    ohm: chosen.ohm,
    source: answer.exposure.source,
    currentA: chosen.currentA,
    deadA: best.currentA,
    cut: answer.exposure.cut,
    ...timesOf(plan, answer, chosen.currentA),
    reproduce: operateArguments(input.job, faulted),
    state: faulted,
  };
}

/** On an alternating net the winding's ceiling bounds everything; `operate` alone solves those nets. */
export function isAlternating({ input, solver }: ProofPlan, wire: string): boolean {
  const { from, to } = input.conductors.get(wire)!;
  return solver.compiled.nets.nets.some(({ nodes }) => nodes.has(from) || nodes.has(to));
}

function wireA(solver: ProofSolver, element: number, { state, a, b }: Fault, ohm: number): number {
  const solution = solver.glance({ ...state, short: [{ a, b, ohm }] });
  // A source under a dead short may come to no rest in the model: such a state shows nothing.
  return solution.converged ? Math.abs(solution.elementA[element]!) : 0;
}

/** Resistance at which the wanted current flows: I falls with R nearly as V/(R0 + R), so the secant on 1/I is nearly exact. */
function resistive(
  currentAt: (ohm: number) => number,
  deadA: number,
  wantedA: number,
): { readonly ohm: number; readonly currentA: number } {
  let low = { ohm: DEAD_SHORT_OHM, currentA: deadA };
  let high = { ohm: 1, currentA: currentAt(1) };
  for (let step = 0; step < MOST_STEPS && high.currentA > wantedA; step++) {
    low = high;
    high = { ohm: high.ohm * 4, currentA: currentAt(high.ohm * 4) };
  }
  for (let step = 0; step < MOST_STEPS; step++) {
    const [x0, x1] = [1 / low.currentA, 1 / high.currentA];
    if (!(x1 > x0)) break;
    const ohm = low.ohm + ((1 / wantedA - x0) / (x1 - x0)) * (high.ohm - low.ohm);
    if (!(ohm > 0) || !Number.isFinite(ohm)) break;
    const next = { ohm, currentA: currentAt(ohm) };
    if (Math.abs(next.currentA - wantedA) <= NEAR_RATIO * wantedA) return next;
    if (next.currentA > wantedA) low = next;
    else high = next;
  }
  return low;
}

function timesOf(plan: ProofPlan, { exposure, placed, worst }: SurvivalAnswer, currentA: number) {
  const fuses = fusesOf(plan.input.job);
  const times = exposure.cut.map((id) =>
    fuseOpensS(fuses.get(id)!, currentA / exposure.cut.length),
  );
  const least = (values: readonly (number | null)[]): number | null => {
    const known = values.filter((one): one is number => one !== null);
    return known.length === 0 ? null : Math.min(...known);
  };
  const most = times.some(({ maxS }) => maxS === null)
    ? null
    : Math.max(...times.map(({ maxS }) => maxS!));
  const opens = {
    opensMinS: least(times.map(({ minS }) => minS)),
    opensMaxS: times.length === 0 ? null : most,
  };
  if (exposure.sumA === null || exposure.cut.length === 0 || placed.startC === null) {
    const peak = worst === null ? null : worst;
    return {
      ...opens,
      peakC: peak?.peakC ?? null,
      limitC: peak?.limitC ?? null,
      limitDuration: peak?.duration ?? null,
      i2tA2s: null,
    };
  }
  const met = bandsOf(exposure.cut, fuses)
    .map((points) =>
      peakBehindFuse(
        {
          ...placed,
          startC: placed.startC!,
          fuse: { points, reading: READING },
          ratingA: exposure.sumA!,
        },
        currentA,
      ),
    )
    .reduce((worse, one) => (one.marginK < worse.marginK ? one : worse));
  return {
    ...opens,
    peakC: met.peakC,
    limitC: met.limitC,
    limitDuration: met.duration,
    i2tA2s: met.i2tA2s,
  };
}

/** Shorts that put the source's current through a conductor: at either end to earth, or to what it has to touch. */
function faultsOf(
  plan: ProofPlan,
  tallies: CurrentTallies,
  wire: string,
  { exposure }: SurvivalAnswer,
): readonly Fault[] {
  const { conductors, job } = plan.input;
  const { nodes } = plan.solver.compiled.jobNetwork;
  const ends = (id: string): readonly string[] => {
    const { from, to } = conductors.get(id)!;
    return [from, to].filter((pin) => !pin.endsWith("~"));
  };
  const fedAt = (pin: string): QuickState | null => {
    if (exposure.sourceKind === "generator") return runningState(plan);
    return tallies.nodeState[nodes.indexOf.get(pin)!] ?? null;
  };
  const { through, via } = exposure;
  if (via !== null) {
    const load = plan.solver.compiled.jobNetwork.elements.find(
      ({ of, kind }) => of === via && kind !== "contact",
    );
    if (load === undefined) return [];
    const [a, b] = [load.from, load.to].map((name) => name.replace(/~$/, "")) as [string, string];
    const state = fedAt(a) ?? fedAt(b);
    return state === null ? [] : [{ state, a, b }];
  }
  if (through !== null && exposure.at === FRAME) {
    return ends(through).flatMap((a) => {
      const state = fedAt(a);
      return state === null ? [] : [{ state, a, b: EARTH }];
    });
  }
  if (through !== null) {
    return ends(through).flatMap((a) => {
      const state = fedAt(a);
      if (state === null) return [];
      const both = together(plan, tallies, state, wire);
      return ends(exposure.at ?? wire).flatMap((b) => {
        if (a === b) return [];
        return both === null
          ? [{ state, a, b }]
          : [
              { state, a, b },
              { state: both, a, b },
            ];
      });
    });
  }
  const hasEarth = job.bodies.length > 0;
  return ends(wire).flatMap((a) => {
    const state = fedAt(a);
    return state === null || !hasEarth ? [] : [{ state, a, b: EARTH }];
  });
}

/** The engine at its fastest, all else as it rests then. */
function runningState({ space }: ProofPlan): QuickState | null {
  const fast = space.engines.find(({ name }) => name === "fast");
  const full = fast && space.completed({}, fast);
  return fast && full ? space.quick(full, fast) : null;
}

/** The state that feeds what is touched, with the switches that let this conductor lead on moved as well. */
function together(
  { space, solver, input }: ProofPlan,
  tallies: CurrentTallies,
  feeding: QuickState,
  wire: string,
): QuickState | null {
  const met = tallies.lastingState[solver.compiled.elementOfConductor.get(wire)!];
  if (met == null || met.state.engine?.mode === "running") return null;
  const stopped = space.engines[0]!;
  const rest = space.completed({}, stopped)!;
  const moved = Object.fromEntries(
    Object.entries(met.state.positions ?? {}).filter(([part, position]) => rest[part] !== position),
  );
  const full = space.completed({ ...feeding.positions, ...moved }, stopped);
  const flash = feeding.flash === "on" || met.state.flash === "on";
  if (full === null || input.job.bodies.length === 0) return null;
  return { ...space.quick(full, stopped), flash: flash ? "on" : "off" };
}
