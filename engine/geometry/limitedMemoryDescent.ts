/** f(x) and its gradient written into `gradient`; x and gradient are of the same length. */
export type Slope = (x: Float64Array, gradient: Float64Array) => number;

export interface Descent {
  readonly value: number;
  readonly evaluationCount: number;
}

export interface DescentLimits {
  readonly evaluationCountMax: number;
  /** Stops when the largest part of the gradient is below this. */
  readonly gradientMax: number;
  /** Stops when the value falls by less than this over eight steps taken together. */
  readonly fallMin: number;
  /** Gives up when the value after `trialCount` evaluations is still above this. */
  readonly hopeless?: { readonly trialCount: number; readonly value: number };
}

/** Pairs of steps remembered. */
const MEMORY_COUNT = 6;
const PATIENCE_COUNT = 8;
/** Armijo: a step must bring this share of the fall its slope promises. */
const FALL_SHARE = 1e-4;
const SHARE_MIN = 1e-10;

/** Vectors and memory of one descent, written over by the next. */
interface Workspace {
  readonly gradient: Float64Array;
  readonly nextX: Float64Array;
  readonly nextGradient: Float64Array;
  readonly direction: Float64Array;
  readonly steps: readonly Float64Array[];
  readonly turns: readonly Float64Array[];
  readonly inverse: Float64Array;
  readonly weight: Float64Array;
  known: number;
  newest: number;
}

/**
 * Minimiser of a smooth function with limited memory of its curvature (L-BFGS: two-loop recursion, steps halved until
 * they bring enough). Works in place on `x`; bounded by counted evaluations.
 *
 * @param size  number of variables; the work space is made once and reused by every call.
 * @source J. Nocedal, Math. Comp. 35 (1980) 773: the recursion.
 */
export function limitedMemoryDescent(size: number) {
  const vector = () => new Float64Array(size);
  const work: Workspace = {
    gradient: vector(),
    nextX: vector(),
    nextGradient: vector(),
    direction: vector(),
    steps: Array.from({ length: MEMORY_COUNT }, vector),
    turns: Array.from({ length: MEMORY_COUNT }, vector),
    inverse: new Float64Array(MEMORY_COUNT),
    weight: new Float64Array(MEMORY_COUNT),
    known: 0,
    newest: -1,
  };
  return (slope: Slope, x: Float64Array, limits: DescentLimits): Descent =>
    descend(work, slope, x, limits);
}

function descend(work: Workspace, slope: Slope, x: Float64Array, limits: DescentLimits): Descent {
  const { gradient, nextX, nextGradient } = work;
  const { hopeless } = limits;
  work.known = 0;
  let evaluationCount = 1;
  let value = slope(x, gradient);
  let milestone = value;
  for (let n = 1; largest(gradient) > limits.gradientMax; n++) {
    const left = limits.evaluationCountMax - evaluationCount;
    const tried = stepAlong(work, slope, { x, value, left });
    evaluationCount += tried.evaluationCount;
    if (tried.value === null) break;
    remember(work, x);
    x.set(nextX);
    gradient.set(nextGradient);
    value = tried.value;
    if (hopeless && evaluationCount > hopeless.trialCount && value > hopeless.value) break;
    if (n % PATIENCE_COUNT === 0) {
      if (milestone - value < limits.fallMin) break;
      milestone = value;
    }
  }
  return { value, evaluationCount };
}

/** direction = −H · gradient, H the inverse curvature as far as it is remembered. */
function aim(work: Workspace): void {
  const { gradient, direction, steps, turns, inverse, weight, known, newest } = work;
  for (let i = 0; i < direction.length; i++) direction[i] = -gradient[i]!;
  for (let k = 0; k < known; k++) {
    const at = (newest - k + MEMORY_COUNT) % MEMORY_COUNT;
    weight[at] = inverse[at]! * dot(steps[at]!, direction);
    addScaled(direction, turns[at]!, -weight[at]!);
  }
  if (known > 0) {
    const turn = turns[newest]!;
    const scale = 1 / (inverse[newest]! * dot(turn, turn));
    for (let i = 0; i < direction.length; i++) direction[i]! *= scale;
  }
  for (let k = known - 1; k >= 0; k--) {
    const at = (newest - k + MEMORY_COUNT) % MEMORY_COUNT;
    addScaled(direction, steps[at]!, weight[at]! - inverse[at]! * dot(turns[at]!, direction));
  }
}

/** Halves the step until it pays: nextX, nextGradient and the value there; null when no step does. */
function stepAlong(
  work: Workspace,
  slope: Slope,
  from: { readonly x: Float64Array; readonly value: number; readonly left: number },
): { readonly value: number | null; readonly evaluationCount: number } {
  const { gradient, nextX, nextGradient, direction } = work;
  aim(work);
  let promised = dot(gradient, direction);
  if (!(promised < 0)) {
    work.known = 0;
    for (let i = 0; i < direction.length; i++) direction[i] = -gradient[i]!;
    promised = -dot(gradient, gradient);
  }
  let share = work.known === 0 ? Math.min(1, 0.1 / Math.sqrt(-promised)) : 1;
  let evaluationCount = 0;
  for (; evaluationCount < from.left && share > SHARE_MIN; share /= 2) {
    for (let i = 0; i < nextX.length; i++) nextX[i] = from.x[i]! + share * direction[i]!;
    evaluationCount++;
    const value = slope(nextX, nextGradient);
    if (value <= from.value + FALL_SHARE * share * promised) return { value, evaluationCount };
  }
  return { value: null, evaluationCount };
}

/** Learns from the step just taken, unless it shows no upward curvature. */
function remember(work: Workspace, x: Float64Array): void {
  const at = (work.newest + 1) % MEMORY_COUNT;
  const step = work.steps[at]!;
  const turn = work.turns[at]!;
  for (let i = 0; i < x.length; i++) {
    step[i] = work.nextX[i]! - x[i]!;
    turn[i] = work.nextGradient[i]! - work.gradient[i]!;
  }
  const curvature = dot(step, turn);
  if (curvature <= 1e-12 * dot(turn, turn)) return;
  work.inverse[at] = 1 / curvature;
  work.newest = at;
  work.known = Math.min(work.known + 1, MEMORY_COUNT);
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let i = 0; i < a.length; i++) sum += a[i]! * b[i]!;
  return sum;
}

function addScaled(a: Float64Array, b: Float64Array, scale: number): void {
  for (let i = 0; i < a.length; i++) a[i]! += scale * b[i]!;
}

function largest(a: Float64Array): number {
  let most = 0;
  for (let i = 0; i < a.length; i++) most = Math.max(most, Math.abs(a[i]!));
  return most;
}
