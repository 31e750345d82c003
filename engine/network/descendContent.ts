import type { CompiledNetwork } from "./compileNetwork.ts";
import { branchSlopesS, factorSlopes } from "./factorSlopes.ts";
import { type KirchhoffCheck, measureKirchhoff } from "./measureKirchhoff.ts";
import { applyShorts, shortColumns } from "./shortColumns.ts";
import type { Short } from "./solution.ts";

/** A step is long enough when the slope of the content along it has fallen to this share of its first value. */
const ENOUGH_RATIO = 0.5;
const LINE_SEARCH_COUNT = 60;

export interface Descent extends KirchhoffCheck {
  readonly stepCount: number;
}

/**
 * Newton with an exact-enough line search, from the volts in work.positionV (or from 0 V). Every law rises, so the node volts minimise the
 * convex content Φ = Σ ∫ i dv, whose gradient is the current left over at each node; the slope of Φ along a step rises
 * steadily, so its zero can be bracketed and no step can run away. Also serves as iterative refinement.
 * (Content: Millar 1951, Philosophical Magazine 42, *memory*.)
 */
export function descendContent(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
  most: number,
): Descent {
  let check = betterStart(compiled, shorts);
  let stepCount = 0;
  const n = compiled.pattern.unknownCount;
  const step = new Float64Array(n + 1);
  const from = new Float64Array(n + 1);
  while (!check.accepted && stepCount < most && Number.isFinite(check.residualA)) {
    stepCount++;
    newtonDirection(compiled, shorts, step);
    from.set(compiled.work.positionV);
    check = walk(compiled, shorts, from, step);
  }
  return { ...check, stepCount };
}

/** The present volts, or 0 V everywhere where that leaves less current over: far up a junction a step gains next to nothing. */
function betterStart(compiled: CompiledNetwork, shorts: readonly Short[]): KirchhoffCheck {
  const { positionV } = compiled.work;
  const here = measureKirchhoff(compiled, shorts);
  const from = positionV.slice();
  positionV.fill(0);
  const atZero = measureKirchhoff(compiled, shorts);
  if (!(here.residualA <= atZero.residualA)) return atZero;
  positionV.set(from);
  return measureKirchhoff(compiled, shorts);
}

/** Solves G · step = −leftover with the slopes last measured. */
function newtonDirection(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
  step: Float64Array,
): void {
  const { work, pattern, network, kernel } = compiled;
  const n = pattern.unknownCount;
  for (let j = 0; j < n; j++) work.injectedA[j] = -work.leftoverA[j]!;
  work.injectedA[n] = 0;
  const slopesS = branchSlopesS(compiled, new Float64Array(network.branches.length));
  factorSlopes(compiled, slopesS, 1 / network.leakOhm);
  if (shorts.length > 0) applyShorts(compiled, shortColumns(compiled, shorts, 0));
  const { injectedA, spareV } = kernel.addresses;
  kernel.run.backward(0, n, injectedA, spareV);
  step.set(work.spareV);
  step[n] = 0;
}

/** Moves along the step until the content has stopped falling (or nearly), and measures there. */
function walk(
  compiled: CompiledNetwork,
  shorts: readonly Short[],
  from: Float64Array,
  step: Float64Array,
): KirchhoffCheck {
  const first = slopeAlong(compiled, step);
  let low = 0;
  let high = 1;
  let t = 1;
  for (let k = 0; ; k++) {
    moveTo(compiled, from, step, t);
    const check = measureKirchhoff(compiled, shorts);
    const slope = slopeAlong(compiled, step);
    const enough = Math.abs(slope) <= ENOUGH_RATIO * Math.abs(first) || (t === 1 && slope <= 0);
    if (check.accepted || enough || k === LINE_SEARCH_COUNT) return check;
    if (slope < 0) low = t;
    else high = t;
    t = (low + high) / 2;
  }
}

/** dΦ/dt = Σ leftover · step. */
function slopeAlong(compiled: CompiledNetwork, step: Float64Array): number {
  const { leftoverA } = compiled.work;
  let sum = 0;
  for (let j = 0; j + 1 < step.length; j++) sum += leftoverA[j]! * step[j]!;
  return sum;
}

function moveTo(
  compiled: CompiledNetwork,
  from: Float64Array,
  step: Float64Array,
  t: number,
): void {
  const { positionV } = compiled.work;
  for (let j = 0; j < step.length; j++) positionV[j] = from[j]! + t * step[j]!;
}
