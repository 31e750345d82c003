import { checkLaw, checkNetwork } from "./checkNetwork.ts";
import { type LawSlots, lawSlots, loadSlot } from "./lawSlots.ts";
import type { Law, Network } from "./network.ts";
import type { BranchOverride } from "./solution.ts";
import { type StarMesh, starMesh } from "./starMesh.ts";
import { type StarMeshPattern, starMeshPattern } from "./starMeshPattern.ts";

/**
 * A network made ready for many solves. The pattern never changes; the arrays under `work` are a workspace that each solve
 * overwrites, so one compiled network serves one caller at a time.
 */
export interface CompiledNetwork {
  readonly network: Network;
  readonly pattern: StarMeshPattern;
  /** Positions of the ends of each branch, and the pattern entry its conductance is added to (−1: both ends on one node). */
  readonly positionA: Int32Array;
  readonly positionB: Int32Array;
  readonly entry: Int32Array;
  /** Slot of each branch that may be nonlinear, −1 for the linear ones; and the branch of each slot. */
  readonly slotOfBranch: Int32Array;
  readonly branchOfSlot: Int32Array;
  readonly work: Workspace;
}

/** Overwritten by every solve. Sizes: n unknown nodes, m branches, k slots. */
export interface Workspace {
  readonly mesh: StarMesh;
  /** The late part of mesh.value, and of injectedA: views, to be overwritten in one go. */
  readonly lateValue: Float64Array;
  readonly lateInjectedA: Float64Array;
  /** Linear branches as they stand in this solve: conductance S and EMF V (size m, 0 where the branch is a slot). */
  readonly linearS: Float64Array;
  readonly linearEmfV: Float64Array;
  readonly slots: LawSlots;
  /** Branches that differ from the compiled network at the moment. */
  readonly overridden: number[];
  /** Result: volts by position (size n + 1, the reference last); branch currents, A. */
  readonly positionV: Float64Array;
  readonly branchA: Float64Array;
  /** Currents left over at each position (size n + 1), A. */
  readonly leftoverA: Float64Array;
  /** Currents injected by sources (size n + 1), A, carried forward by the elimination. */
  readonly injectedA: Float64Array;
  /** The linear part eliminated: what is left of it for the late columns, and what it was made from. */
  readonly reducedS: Float64Array;
  readonly reducedA: Float64Array;
  readonly factoredS: Float64Array;
  readonly factoredEmfV: Float64Array;
  /** [0]: how many linear branches differ from those; [1]: 1 while the mesh holds the reduced linear part at all. */
  readonly factored: Int32Array;
  /** Linearisation of each slot: i ≈ lineA + lineS · (v − lineV). */
  readonly lineV: Float64Array;
  readonly lineA: Float64Array;
  readonly lineS: Float64Array;
}

/** Orders, analyses and lays out a network. Throws on a network that breaks the rules of `Network` (a bug of the caller). */
export function compileNetwork(network: Network): CompiledNetwork {
  checkNetwork(network);
  const { branches } = network;
  const nonlinear = branches.flatMap((branch, k) => (isLinear(branch.law) ? [] : [k]));
  const late = new Set(nonlinear.flatMap((k) => [branches[k]!.a, branches[k]!.b]));
  const pairs = branches.map((branch) => [branch.a, branch.b] as const);
  const pattern = starMeshPattern(network.nodeCount, pairs, late);
  const slotOfBranch = new Int32Array(branches.length).fill(-1);
  nonlinear.forEach((k, s) => {
    slotOfBranch[k] = s;
  });
  const place = (node: number): number => pattern.positionOfNode[node]!;
  const compiled: CompiledNetwork = {
    network,
    pattern,
    positionA: Int32Array.from(branches, (branch) => place(branch.a)),
    positionB: Int32Array.from(branches, (branch) => place(branch.b)),
    entry: Int32Array.from(branches, ({ a, b }) =>
      a === b ? -1 : pattern.entryIndex(place(a), place(b))!,
    ),
    slotOfBranch,
    branchOfSlot: Int32Array.from(nonlinear),
    work: workspace(
      pattern,
      branches.map((branch) => branch.law),
      nonlinear.map((k) => branches[k]!.law),
    ),
  };
  branches.forEach((branch, k) => {
    setLaw(compiled, k, branch.law);
  });
  return compiled;
}

export function isLinear(law: Law): boolean {
  return law.kind === "ohm" || law.kind === "emf";
}

function workspace(
  pattern: StarMeshPattern,
  laws: readonly Law[],
  slotLaws: readonly Law[],
): Workspace {
  const n = pattern.unknownCount;
  const m = laws.length;
  const lateEntries = pattern.rowIndex.length - pattern.columnStart[pattern.splitColumn]!;
  const floats = (size: number): Float64Array => new Float64Array(size);
  const mesh = starMesh(pattern);
  const injectedA = floats(n + 1);
  return {
    mesh,
    lateValue: mesh.value.subarray(pattern.columnStart[pattern.splitColumn]!),
    lateInjectedA: injectedA.subarray(pattern.splitColumn),
    linearS: floats(m),
    linearEmfV: floats(m),
    slots: lawSlots(slotLaws),
    overridden: [],
    positionV: floats(n + 1),
    branchA: floats(m),
    leftoverA: floats(n + 1),
    injectedA,
    reducedS: floats(lateEntries),
    reducedA: floats(n + 1 - pattern.splitColumn),
    factoredS: floats(m),
    factoredEmfV: floats(m),
    factored: new Int32Array(2),
    lineV: floats(slotLaws.length),
    lineA: floats(slotLaws.length),
    lineS: floats(slotLaws.length),
  };
}

/** Puts a law on a branch in the workspace. A nonlinear law fits only where the compiled branch was nonlinear. */
function setLaw(compiled: CompiledNetwork, branchIndex: number, law: Law): void {
  const { work, slotOfBranch } = compiled;
  const slot = slotOfBranch[branchIndex]!;
  if (slot >= 0) loadSlot(work.slots, slot, law);
  else if (law.kind === "ohm") setLinear(work, branchIndex, 1 / law.ohm, 0);
  else if (law.kind === "emf") setLinear(work, branchIndex, 1 / law.internalOhm, law.emfV);
  else throw new Error(`Branch ${branchIndex} was compiled linear and cannot take a ${law.kind}`);
}

function setLinear(work: Workspace, k: number, conductanceS: number, emfV: number): void {
  const { linearS, linearEmfV, factoredS, factoredEmfV, factored } = work;
  const differed = linearS[k] !== factoredS[k] || linearEmfV[k] !== factoredEmfV[k];
  const differs = conductanceS !== factoredS[k] || emfV !== factoredEmfV[k];
  linearS[k] = conductanceS;
  linearEmfV[k] = emfV;
  factored[0] = factored[0]! + Number(differs) - Number(differed);
}

/** Brings the workspace back to the compiled network, then applies the overrides of this solve. */
export function applyOverrides(
  compiled: CompiledNetwork,
  overrides: readonly BranchOverride[],
): void {
  const { overridden } = compiled.work;
  for (const k of overridden) setLaw(compiled, k, compiled.network.branches[k]!.law);
  overridden.length = 0;
  for (const { branchIndex, law } of overrides) {
    checkLaw(law, branchIndex);
    overrideLaw(compiled, branchIndex, law);
  }
}

/** Overrides one more branch until the next `applyOverrides`. */
export function overrideLaw(compiled: CompiledNetwork, branchIndex: number, law: Law): void {
  setLaw(compiled, branchIndex, law);
  compiled.work.overridden.push(branchIndex);
}
