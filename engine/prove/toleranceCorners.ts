import { conditionsOf, type OperateRequest } from "../operate/index.ts";
import { raise } from "./bridgedCurrents.ts";
import { isStarting, starterElements } from "./currentTallies.ts";
import type { ProofPlan } from "./proofPlan.ts";
import { type ProofSolver, proofSolver } from "./proofSolver.ts";
import type { MergedFirst } from "./provePart.ts";
import type { Group } from "./switchGroups.ts";
import { COLD_C } from "./weakShorts.ts";

/** A length somebody estimated, or nobody measured, may be this much longer or shorter. Our own band. */
export const LENGTH_BAND_RATIO = 0.2;
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

/** A corner with what it changes. */
export interface SolvedCorner {
  readonly index: number;
  readonly name: string;
  /** Loads that are lit at the usual conditions and not at the corner, or the other way round, in any state of their own group. */
  readonly changed: readonly string[];
  /** Largest current of every element over the states solved at the corner. */
  readonly largestA: Float64Array;
}

/** The corners of one share, each solved in every state of every group with the engine stopped. */
export function toleranceCorners(
  plan: ProofPlan,
  states: MergedFirst["states"],
  isOwn: (index: number) => boolean,
): readonly SolvedCorner[] {
  const still = states.filter(({ engine }) => engine === "stopped");
  return CORNERS.flatMap((corner, index) =>
    isOwn(index) ? [{ index, name: corner.name, ...cornerOf(plan, corner, still) }] : [],
  );
}

function cornerOf(plan: ProofPlan, corner: Corner, still: MergedFirst["states"]) {
  const { solver, input } = plan;
  const machine =
    corner.lengthRatio === undefined
      ? input
      : { ...input, conductors: longer(input, corner.lengthRatio) };
  const there = proofSolver(machine, {
    conditions: conditionsOf(input.job, corner.request),
    tally: solver.tally,
    like: solver,
  });
  const changed = new Set<string>();
  const loadsOf = loadsInGroup(solver);
  const starters = starterElements(there.compiled);
  const largestA = new Float64Array(there.compiled.jobNetwork.elements.length);
  for (const { stateIndex, lit } of still) {
    const { group, light } = plan.states[stateIndex]!;
    const usual = new Set(lit);
    const solution = there.glance(light);
    const shares = there.shares(light, solution);
    if (!isStarting(solution.elementA, starters)) {
      raise(largestA, solution.elementA);
    }
    for (const k of loadsOf(group)) {
      if (usual.has(k) !== shares[k]! >= solver.litRatio) changed.add(solver.loads[k]!.load.ref);
    }
  }
  return { changed: [...changed].sort(), largestA };
}

/** Indices of the loads that lie in a group and are solved here. */
function loadsInGroup({ loads }: ProofSolver): (group: Group) => readonly number[] {
  const known = new Map<Group, readonly number[]>();
  return (group) => {
    const own =
      known.get(group) ??
      loads.flatMap(({ element, alternating }, k) =>
        alternating || !group.elements.has(element) ? [] : [k],
      );
    known.set(group, own);
    return own;
  };
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
