import { batteriesOf, loadRef } from "../job/index.ts";
import { type Law, settleFrom } from "../network/index.ts";
import type { CompiledJob, QuickState } from "../operate/index.ts";
import { zenerLaws } from "./zeners.ts";

/** What the machine draws at the battery posts, by volts there; straight lines between. */
export interface DemandCurve {
  readonly v: readonly number[];
  readonly currentA: readonly number[];
}

/** The loads solved with stiff volts at the posts and every source idle. */
export interface StiffSolution {
  readonly nodeV: Float64Array;
  readonly elementA: Float64Array;
  readonly drawnA: number;
  readonly converged: boolean;
}

const OPEN: Law = { kind: "ohm", ohm: 1e9 };
/** Of the stiff battery, Ω: a millivolt at ten amperes; stiffer ones cost the solver its last digits. */
const STIFF_OHM = 1e-4;
/** Volts of the curve over nominal: from a battery that is dead to an alternator that runs away. */
const SPAN_RATIOS = [0.7, 0.85, 1, 1.1, 1.2, 1.35] as const;

/**
 * Solves a state with `v` at the battery posts. Charging sources idle, a dynamo's cut-out is open and an excited field is taken
 * as fed by its own generator: this is the demand alone.
 */
export function solveStiff(compiled: CompiledJob, state: QuickState, v: number): StiffSolution {
  const { jobNetwork, compiledNetwork, job } = compiled;
  const set = compiled.networkState(state);
  const batteries = batteriesOf(job);
  const posts = new Set(
    batteries.map(({ battery }) => loadRef(battery.id, [battery.positivePin, battery.negativePin])),
  );
  const emfs = jobNetwork.elements.flatMap(({ kind, of }, k) =>
    kind === "emf" && posts.has(of) ? [k] : [],
  );
  const nominalSumV = batteries.reduce((sumV, { battery }) => sumV + battery.nominalV, 0);
  const ratio = v / (nominalSumV > 0 ? nominalSumV : 1);
  const laws = new Map<number, Law>();
  emfs.forEach((k, i) => {
    const emfV = batteries[i]!.battery.nominalV * ratio;
    laws.set(k, { kind: "emf", emfV, internalOhm: STIFF_OHM });
  });
  jobNetwork.elements.forEach(({ role, kind, of }, k) => {
    if (role.role === "cutOut") laws.set(k, OPEN);
    if (kind === "coil" && isField(compiled, of)) laws.set(k, OPEN);
  });
  const overrides = [
    ...set.overrides,
    ...[...laws].map(([branchIndex, law]) => ({ branchIndex, law })),
  ];
  const start = set.relays.map((relay) => relay.held);
  const settled = settleFrom(compiledNetwork, set.relays, start, { overrides, shorts: set.shorts });
  const { nodeV, branchA } = settled.solution;
  const drawnA = emfs.length === 0 ? 0 : -branchA[emfs[0]!]!;
  return { nodeV, elementA: branchA, drawnA, converged: settled.converged && settled.settled };
}

function isField({ job }: CompiledJob, of: string): boolean {
  return job.parts.some(
    (part) =>
      part.kind === "generator" &&
      part.windings.some(
        ({ use, pins }) =>
          use === "field" && of === loadRef(part.id, [pins[0]!, pins[1] ?? "case"]),
      ),
  );
}

/** Demand of a state over the volts a machine meets; null where a solve does not converge. */
export function demandCurve(compiled: CompiledJob, state: QuickState): DemandCurve | null {
  const spanV = SPAN_RATIOS.map((ratio) => ratio * compiled.job.supply.nominalV);
  // A zener's current has corners that straight lines between the others would cut off.
  const knees = zenerLaws(compiled).flatMap(({ points }) => points.map(([kneeV]) => kneeV));
  const within = knees.filter((kneeV) => kneeV > spanV[0]! && kneeV < spanV.at(-1)!);
  const v = [...new Set([...spanV, ...within])].sort((a, b) => a - b);
  const solved = v.map((one) => solveStiff(compiled, state, one));
  if (solved.some(({ converged }) => !converged)) return null;
  return { v, currentA: solved.map(({ drawnA }) => drawnA) };
}

/** Amperes drawn at v volts; outside the curve the nearest stretch goes on. */
export function demandAt({ v, currentA }: DemandCurve, atV: number): number {
  let k = 1;
  while (k < v.length - 1 && v[k]! < atV) k++;
  const ratio = (atV - v[k - 1]!) / (v[k]! - v[k - 1]!);
  return currentA[k - 1]! + ratio * (currentA[k]! - currentA[k - 1]!);
}
