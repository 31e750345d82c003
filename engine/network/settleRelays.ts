import type { CompiledNetwork } from "./compileNetwork.ts";
import type { RelayRule } from "./network.ts";
import { startLines } from "./newtonSteps.ts";
import { applyOverrides, overrideOhm } from "./overrides.ts";
import type { Solution, SolveOptions, SolveStatus } from "./solution.ts";
import { fitted, readSolution, solveAsSet } from "./solveNetwork.ts";

/** Rounds before a chain of relays is given up as unsettled. */
const MOST_ROUNDS = 64;

export interface RelayOptions extends SolveOptions {
  /** Default 64. */
  readonly maxRoundCount?: number;
  /** By branch: raised to its largest |current| in any network solved on the way, A. */
  readonly mostA?: Float64Array;
}

/** How the relays came to rest, or did not. */
export interface RelayStatus extends SolveStatus {
  /** Position of each relay in the last network solved, in the order of the rules. */
  readonly pulled: readonly boolean[];
  /** True when every coil agrees with its contacts. */
  readonly settled: boolean;
  /** Ids, sorted, of relays that pull and drop for ever; empty when settled. */
  readonly buzzing: readonly string[];
  /** Networks solved. */
  readonly roundCount: number;
  /** By how much the volts of any coil, in any network solved, missed where it would have gone another way, V. */
  readonly leastMarginV: number;
}

/** A relay position with the network solved in it. */
export interface RelaySettlement extends RelayStatus {
  readonly solution: Solution;
  /** |v| across each coil, V, in the order of the rules. */
  readonly coilV: Float64Array;
}

/** The same state reached from both ends. */
export interface BothSettlements {
  /** From every relay released, except those marked `held`. */
  readonly fromReleased: RelaySettlement;
  /** From every relay pulled. */
  readonly fromPulled: RelaySettlement;
  /** True when the two rest in different positions: the answer depends on what was pressed first. */
  readonly differ: boolean;
}

/**
 * Settles a state twice, from all released (and held) and from all pulled.
 *
 * @param known  the first of the two, where the same has been settled just now.
 */
export function settleRelays(
  compiled: CompiledNetwork,
  relays: readonly RelayRule[],
  options: RelayOptions = {},
  known: RelaySettlement | null = null,
): BothSettlements {
  const held = relays.map((relay) => relay.held);
  const fromReleased = known ?? settleFrom(compiled, relays, held, options);
  const all = relays.map(() => true);
  const fromPulled = settleFrom(compiled, relays, all, options);
  const differ =
    fromReleased.settled !== fromPulled.settled ||
    fromReleased.pulled.some((pulled, k) => pulled !== fromPulled.pulled[k]);
  return { fromReleased, fromPulled, differ };
}

/** Settles a state from given relay positions. */
export function settleFrom(
  compiled: CompiledNetwork,
  relays: readonly RelayRule[],
  start: readonly boolean[],
  options: RelayOptions = {},
): RelaySettlement {
  const fitting = fitted(compiled, options);
  const status = settleInPlace(fitting.compiled, relays, start, fitting.options);
  const solution = readSolution(fitting, status, compiled.network, options.shorts ?? []);
  const coilV = new Float64Array(relays.length);
  relays.forEach(({ coilA, coilB }, k) => {
    coilV[k] = Math.abs(solution.nodeV[coilA]! - solution.nodeV[coilB]!);
  });
  return { ...status, solution, coilV };
}

/**
 * Solve, move every relay its coil tells to move, solve again, until none moves. A set of positions met before means the relays
 * chase each other: buzzing. Leaves the last network in the workspace, as `solveInPlace` does.
 */
export function settleInPlace(
  compiled: CompiledNetwork,
  relays: readonly RelayRule[],
  start: readonly boolean[],
  options: RelayOptions = {},
): RelayStatus {
  applyOverrides(compiled, options.overrides ?? []);
  startLines(compiled, options.initialV ?? null);
  const most = options.maxRoundCount ?? MOST_ROUNDS;
  const met: (readonly boolean[])[] = [];
  let pulled = start;
  let iterationCount = 0;
  let leastMarginV = Number.POSITIVE_INFINITY;
  for (;;) {
    setContacts(compiled, relays, pulled);
    const solved = solveAsSet(compiled, options);
    iterationCount += solved.iterationCount;
    if (options.mostA !== undefined) raise(options.mostA, compiled.work.branchA);
    leastMarginV = Math.min(leastMarginV, marginV(compiled, relays));
    met.push(pulled);
    const next = nextPositions(compiled, relays, pulled);
    const settled = next === pulled;
    const since = settled ? -1 : met.findIndex((earlier) => same(earlier, next));
    if (settled || since >= 0 || !solved.converged || met.length >= most) {
      return {
        converged: solved.converged,
        kclResidualA: solved.kclResidualA,
        iterationCount,
        pulled,
        settled,
        buzzing: since >= 0 ? movers(relays, met.slice(since)) : [],
        roundCount: met.length,
        leastMarginV,
      };
    }
    pulled = next;
  }
}

function setContacts(
  compiled: CompiledNetwork,
  relays: readonly RelayRule[],
  pulled: readonly boolean[],
): void {
  for (let k = 0; k < relays.length; k++) {
    const { closedWhenPulled, closedWhenReleased, closedOhm, openOhm } = relays[k]!;
    const whenPulledOhm = pulled[k] ? closedOhm : openOhm;
    const whenReleasedOhm = pulled[k] ? openOhm : closedOhm;
    for (let j = 0; j < closedWhenPulled.length; j++) {
      overrideOhm(compiled, closedWhenPulled[j]!, whenPulledOhm);
    }
    for (let j = 0; j < closedWhenReleased.length; j++) {
      overrideOhm(compiled, closedWhenReleased[j]!, whenReleasedOhm);
    }
  }
}

/** Where the coils send the relays; `pulled` itself when none moves. */
function nextPositions(
  compiled: CompiledNetwork,
  relays: readonly RelayRule[],
  pulled: readonly boolean[],
): readonly boolean[] {
  const { positionOfNode } = compiled.pattern;
  const { positionV } = compiled.work;
  let next: boolean[] | null = null;
  for (let k = 0; k < relays.length; k++) {
    const { coilA, coilB, pullInV, dropOutV } = relays[k]!;
    const v = Math.abs(positionV[positionOfNode[coilA]!]! - positionV[positionOfNode[coilB]!]!);
    const goes = v >= pullInV || (v > dropOutV && pulled[k]!);
    if (goes === pulled[k]) continue;
    next ??= [...pulled];
    next[k] = goes;
  }
  return next ?? pulled;
}

/** Distance of the nearest coil from where it pulls or drops, V. */
function marginV(compiled: CompiledNetwork, relays: readonly RelayRule[]): number {
  const { positionOfNode } = compiled.pattern;
  const { positionV } = compiled.work;
  let leastV = Number.POSITIVE_INFINITY;
  for (let k = 0; k < relays.length; k++) {
    const { coilA, coilB, pullInV, dropOutV } = relays[k]!;
    const v = Math.abs(positionV[positionOfNode[coilA]!]! - positionV[positionOfNode[coilB]!]!);
    leastV = Math.min(leastV, Math.abs(v - pullInV), Math.abs(v - dropOutV));
  }
  return leastV;
}

function raise(mostA: Float64Array, branchA: Float64Array): void {
  for (let k = 0; k < mostA.length; k++) {
    const currentA = Math.abs(branchA[k]!);
    if (currentA > mostA[k]!) mostA[k] = currentA;
  }
}

function same(one: readonly boolean[], other: readonly boolean[]): boolean {
  for (let k = 0; k < one.length; k++) if (one[k] !== other[k]) return false;
  return true;
}

function movers(relays: readonly RelayRule[], cycle: readonly (readonly boolean[])[]): string[] {
  return relays
    .filter((_, k) => cycle.some((positions) => positions[k] !== cycle[0]![k]))
    .map((relay) => relay.id)
    .sort();
}
