import type { CompiledNetwork } from "./compileNetwork.ts";
import { branchSlopesS, factorSlopes } from "./factorSlopes.ts";
import { inverseDiagonal } from "./theveninConductances.ts";

/** Which shorts to screen and what to watch: every pair with every resistance. */
export interface ScreenRequest {
  /** Nodes joined by each short; node 0 is the reference. */
  readonly pairs: readonly (readonly [a: number, b: number])[];
  /** Resistances of the short, Ω, each above 0. */
  readonly shortOhm: readonly number[];
  /** Branches whose current is wanted under each short. */
  readonly monitoredBranches: readonly number[];
}

/**
 * Room for the answers of a screening, filled anew by each `screenFaults`. Fault f = pair · shortOhm.length + resistance.
 * The figures are of the network linearised where it stands without the short: estimates, to be confirmed by `solveNetwork`.
 */
export interface Screen extends PairScreen {
  /** Current of each fault, A, from a to b. */
  readonly faultA: Float64Array;
  /** Current of monitored branch k under fault f, A, at f · monitoredBranches.length + k. */
  readonly monitoredA: Float64Array;
}

/** Pairs of nodes to be screened, without room for what each short does. */
export interface PairScreen {
  readonly compiled: CompiledNetwork;
  readonly request: ScreenRequest;
  readonly room: ScreenRoom;
}

interface ScreenRoom {
  readonly pairPosition: Int32Array;
  readonly slopeS: Float64Array;
  readonly diagonalOhm: Float64Array;
  /** G⁻¹·(e_a − e_b) of each monitored branch, n + 1 volts per ampere each, one after another. */
  readonly monitoredOhm: readonly Float64Array[];
  readonly columnOhm: Float64Array;
  /** For each pair the resistance seen between its nodes, Ω. */
  readonly seenOhm: Float64Array;
  readonly monitoredBeforeA: Float64Array;
  readonly transfer: Float64Array;
}

/** Lays out a screening of a compiled network. */
export function planScreen(compiled: CompiledNetwork, request: ScreenRequest): Screen {
  const faultCount = request.pairs.length * request.shortOhm.length;
  return {
    ...planPairs(compiled, request),
    faultA: new Float64Array(faultCount),
    monitoredA: new Float64Array(faultCount * request.monitoredBranches.length),
  };
}

/** The same for `screenPairs`, which writes no answers down. */
export function planPairs(compiled: CompiledNetwork, request: ScreenRequest): PairScreen {
  const { pattern, network } = compiled;
  const size = pattern.unknownCount + 1;
  const watched = request.monitoredBranches.length;
  for (const ohm of request.shortOhm) if (!(ohm > 0)) throw new Error(`Short of ${ohm} ohm`);
  return {
    compiled,
    request,
    room: {
      pairPosition: Int32Array.from(request.pairs.flat(), (node) => pattern.positionOfNode[node]!),
      slopeS: new Float64Array(network.branches.length),
      diagonalOhm: new Float64Array(size),
      monitoredOhm: request.monitoredBranches.map(() => new Float64Array(size)),
      columnOhm: new Float64Array(size),
      seenOhm: new Float64Array(request.pairs.length),
      monitoredBeforeA: new Float64Array(watched),
      transfer: new Float64Array(watched),
    },
  };
}

/**
 * Screens the state last solved in place: with G the slopes at its solution and x = e_a − e_b, a short of R carries
 * i = (v_a − v_b)/(R + xᵀ·G⁻¹·x) and changes branch m by −g_m·i·x_mᵀ·G⁻¹·x (Sherman & Morrison 1950). One factorisation and one
 * solve for each monitored branch, then a few multiplications for each fault.
 */
export function screenFaults(screen: Screen): void {
  seeFaults(screen);
  fill(screen);
}

/** One pair of nodes as screened: everything its shorts do follows from these. */
export type PairSeen = (
  pairIndex: number,
  /** Between its nodes with nothing shorted, and the resistance seen there. */
  volts: number,
  seenOhm: number,
  /** Currents of the monitored branches with nothing shorted, A, and what each loses for an ampere through the short. */
  beforeA: Float64Array,
  transfer: Float64Array,
) => void;

/**
 * `screenFaults` without writing the answers down: a short of R ohm carries i = volts/(R + seenOhm), a monitored branch then
 * beforeA − transfer·i. The arrays are good until `tell` returns.
 */
export function screenPairs(screen: PairScreen, tell: PairSeen): void {
  seeFaults(screen);
  const { room, compiled } = screen;
  const { pairPosition, seenOhm, monitoredBeforeA, transfer } = room;
  const { positionV } = compiled.work;
  for (let pair = 0; pair < seenOhm.length; pair++) {
    seeTransfer(screen, pair);
    const volts = positionV[pairPosition[2 * pair]!]! - positionV[pairPosition[2 * pair + 1]!]!;
    tell(pair, volts, seenOhm[pair]!, monitoredBeforeA, transfer);
  }
}

function seeFaults(screen: PairScreen): void {
  const { compiled, request, room } = screen;
  const { work, pattern } = compiled;
  branchSlopesS(compiled, room.slopeS);
  factorSlopes(compiled, room.slopeS, 1 / compiled.network.leakOhm);
  inverseDiagonal(compiled, room.diagonalOhm);
  room.diagonalOhm[pattern.unknownCount] = 0;
  request.monitoredBranches.forEach((branch, k) => {
    const column = room.monitoredOhm[k]!;
    inverseColumn(screen, work.positionA[branch]!, work.positionB[branch]!, column);
    room.monitoredBeforeA[k] = work.branchA[branch]!;
  });
  seePairs(screen);
}

/** What each monitored branch loses for an ampere through a short of the pair. */
function seeTransfer({ request, room }: PairScreen, pair: number): void {
  const { pairPosition, monitoredOhm, transfer, slopeS } = room;
  const a = pairPosition[2 * pair]!;
  const b = pairPosition[2 * pair + 1]!;
  for (let k = 0; k < transfer.length; k++) {
    const column = monitoredOhm[k]!;
    transfer[k] = slopeS[request.monitoredBranches[k]!]! * (column[a]! - column[b]!);
  }
}

/** G⁻¹·(e_a − e_b), Ω, into `column`. */
function inverseColumn({ compiled }: PairScreen, a: number, b: number, column: Float64Array): void {
  const { addresses, run, arrays } = compiled.kernel;
  const { spareA, spareV } = arrays;
  const n = compiled.pattern.unknownCount;
  spareA.fill(0);
  spareA[a] = spareA[a]! + 1;
  spareA[b] = spareA[b]! - 1;
  run.forward(0, n, addresses.spareA);
  run.backward(0, n, addresses.spareA, addresses.spareV);
  column.set(spareV);
  column[n] = 0;
}

/** Resistance seen between the nodes of each pair; pairs of two unknown nodes cost a column, shared by a run of equal a. */
function seePairs(screen: PairScreen): void {
  const { room, compiled } = screen;
  const { pairPosition, diagonalOhm, columnOhm, seenOhm } = room;
  const n = compiled.pattern.unknownCount;
  let columnOf = -1;
  for (let k = 0; k < seenOhm.length; k++) {
    const a = pairPosition[2 * k]!;
    const b = pairPosition[2 * k + 1]!;
    let mutualOhm = 0;
    if (a !== n && b !== n) {
      if (columnOf !== a) inverseColumn(screen, a, n, columnOhm);
      columnOf = a;
      mutualOhm = columnOhm[b]!;
    }
    seenOhm[k] = a === b ? 0 : diagonalOhm[a]! + diagonalOhm[b]! - 2 * mutualOhm;
  }
}

function fill(screen: Screen): void {
  const { compiled, request, room, faultA, monitoredA } = screen;
  const { pairPosition, monitoredBeforeA, transfer, seenOhm } = room;
  const { positionV } = compiled.work;
  const { shortOhm } = request;
  const watched = transfer.length;
  let f = 0;
  for (let pair = 0; pair < seenOhm.length; pair++) {
    const v = positionV[pairPosition[2 * pair]!]! - positionV[pairPosition[2 * pair + 1]!]!;
    seeTransfer(screen, pair);
    for (let r = 0; r < shortOhm.length; r++, f++) {
      const iA = v / (shortOhm[r]! + seenOhm[pair]!);
      faultA[f] = iA;
      for (let k = 0; k < watched; k++) {
        monitoredA[f * watched + k] = monitoredBeforeA[k]! - transfer[k]! * iA;
      }
    }
  }
}
