import { checkNetwork } from "./checkNetwork.ts";
import type { Counts, KernelArrays } from "./kernelMemory.ts";
import { evaluateOther, type LawSlots, limitOther, loadSlot } from "./lawSlots.ts";
import type { Law, Network } from "./network.ts";
import { type NetworkKernel, networkKernel } from "./networkKernel.ts";
import { applyShorts, NO_SHORTS, type ShortColumns } from "./shortColumns.ts";
import { type StarMeshPattern, starMeshPattern } from "./starMeshPattern.ts";

/**
 * A network made ready for many solves. The pattern never changes; the arrays under `work` are a workspace that each solve
 * overwrites, so one compiled network serves one caller at a time.
 */
export interface CompiledNetwork {
  readonly network: Network;
  readonly pattern: StarMeshPattern;
  /** Slot of each branch that may be nonlinear, −1 for the linear ones. */
  readonly slotOfBranch: Int32Array;
  readonly kernel: NetworkKernel;
  /** The arrays of the kernel: see kernelMemory.ts for each. */
  readonly work: KernelArrays;
  readonly slots: LawSlots;
  /** What the present solve adds to the network; changed by each. */
  readonly now: Now;
}

/** A network with the order it is eliminated in. */
export type NetworkOrder = Pick<CompiledNetwork, "network" | "pattern">;

export interface Now {
  /** Branches that differ from the compiled network at the moment. */
  readonly overridden: number[];
  /** The solve in which each branch was last overridden, and the number of the present one. */
  readonly overriddenIn: Int32Array;
  solveIndex: number;
  shorts: ShortColumns;
  /** True while the mesh holds the linear part reduced, as the linear branches stand. */
  reduced: boolean;
}

/**
 * Orders, analyses and lays out a network. Throws on a network that breaks the rules of `Network` (a bug of the caller).
 *
 * @param like  a network laid out before: where it joins the same nodes by linear and other branches alike its order serves again.
 */
export function compileNetwork(
  network: Network,
  like: NetworkOrder | null = null,
): CompiledNetwork {
  checkNetwork(network);
  const { branches } = network;
  const nonlinear = branches.flatMap((branch, k) => (isLinear(branch.law) ? [] : [k]));
  const pattern =
    like !== null && isOrderedAlike(like.network, network) ? like.pattern : ordered(network);
  const slotOfBranch = new Int32Array(branches.length).fill(-1);
  nonlinear.forEach((k, s) => {
    slotOfBranch[k] = s;
  });
  const laws = nonlinear.map((k) => branches[k]!.law);
  const kernel = networkKernel(
    counts(pattern, branches.length, laws.length),
    places(network, pattern, nonlinear),
    {
      evaluateOther: (s) => evaluateOther(compiled.slots, s),
      limitOther: (s) => limitOther(compiled.slots, s),
      applyShorts: () => applyShorts(compiled, compiled.now.shorts),
    },
  );
  const compiled: CompiledNetwork = {
    network,
    pattern,
    slotOfBranch,
    kernel,
    work: kernel.arrays,
    slots: { law: laws, arrays: kernel.arrays },
    now: {
      overridden: [],
      overriddenIn: new Int32Array(branches.length),
      solveIndex: 0,
      shorts: NO_SHORTS,
      reduced: false,
    },
  };
  branches.forEach((branch, k) => {
    setLaw(compiled, k, branch.law);
  });
  return compiled;
}

function ordered({ nodeCount, branches }: Network): StarMeshPattern {
  const nonlinear = branches.filter(({ law }) => !isLinear(law));
  const late = new Set(nonlinear.flatMap(({ a, b }) => [a, b]));
  return starMeshPattern(
    nodeCount,
    branches.map(({ a, b }) => [a, b] as const),
    late,
  );
}

function isOrderedAlike(one: Network, other: Network): boolean {
  return (
    one.nodeCount === other.nodeCount &&
    one.branches.length === other.branches.length &&
    one.branches.every(({ a, b, law }, k) => {
      const same = other.branches[k]!;
      return a === same.a && b === same.b && isLinear(law) === isLinear(same.law);
    })
  );
}

export function isLinear(law: Law): boolean {
  return law.kind === "ohm" || law.kind === "emf";
}

function counts(pattern: StarMeshPattern, branchCount: number, slotCount: number): Counts {
  const { unknownCount, splitColumn, columnStart, rowIndex } = pattern;
  return {
    unknownCount,
    branchCount,
    slotCount,
    splitColumn,
    firstLate: columnStart[splitColumn]!,
    entryCount: rowIndex.length,
  };
}

/** Where each branch goes: positions of its ends, and the entry its conductance is added to (−1: both ends on one node). */
function places({ branches }: Network, pattern: StarMeshPattern, nonlinear: readonly number[]) {
  const place = (node: number): number => pattern.positionOfNode[node]!;
  const { columnStart, rowIndex, updateStart, updateTarget } = pattern;
  return {
    ...{ columnStart, rowIndex, updateStart, updateTarget },
    positionA: Int32Array.from(branches, (branch) => place(branch.a)),
    positionB: Int32Array.from(branches, (branch) => place(branch.b)),
    entry: Int32Array.from(branches, ({ a, b }) =>
      a === b ? -1 : pattern.entryIndex(place(a), place(b))!,
    ),
    branchOfSlot: Int32Array.from(nonlinear),
    isFilament: new Int32Array(nonlinear.length),
  };
}

/** Puts a law on a branch of the workspace. A nonlinear law fits only where the compiled branch was nonlinear. */
export function setLaw(compiled: CompiledNetwork, branchIndex: number, law: Law): void {
  const slot = compiled.slotOfBranch[branchIndex]!;
  if (slot >= 0) loadSlot(compiled.slots, slot, law);
  else if (law.kind === "ohm") setLinear(compiled, branchIndex, 1 / law.ohm, 0);
  else if (law.kind === "emf") setLinear(compiled, branchIndex, 1 / law.internalOhm, law.emfV);
  else throw new Error(`Branch ${branchIndex} was compiled linear and cannot take a ${law.kind}`);
}

/** Gives a branch compiled linear i = conductanceS · (v − emfV); the linear part is made anew only if that changes it. */
export function setLinear(
  { work, now }: CompiledNetwork,
  k: number,
  conductanceS: number,
  emfV: number,
): void {
  if (work.linearS[k] === conductanceS && work.linearEmfV[k] === emfV) return;
  work.linearS[k] = conductanceS;
  work.linearEmfV[k] = emfV;
  now.reduced = false;
}
