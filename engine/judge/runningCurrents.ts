import { type Job, presentParts } from "../job/index.ts";
import {
  type CompiledJob,
  type QuickState,
  RUNNING_RPM,
  readState,
  solveState,
} from "../operate/index.ts";
import { alternatingStates } from "./alternatingStates.ts";
import { declaredStates } from "./declaredStates.ts";

/** Bounds the states with the engine running, and those whose alternating nets are solved: they are dearer. */
const RUNNING_COUNT_MAX = 6;
const ALTERNATING_COUNT_MAX = 3;

/** Charging leads and alternating nets carry nothing until the engine runs. */
export function runningCurrents(
  compiled: CompiledJob,
  best: readonly QuickState[],
  keep: (state: QuickState, elementA: Float64Array) => void,
): void {
  const { job } = compiled;
  const speedRpm = fastestRpm(job);
  if (speedRpm === null) return;
  const engine = { mode: "running" as const, speedRpm };
  const declared = declaredStates(job).map(({ state }) => state);
  const asked = declared.filter((state) => state.engine?.mode === "running");
  const states = [...best.slice(0, RUNNING_COUNT_MAX), ...asked]
    .slice(0, RUNNING_COUNT_MAX)
    .map((state) => ({ ...state, engine }));
  for (const state of states) {
    const solution = compiled.solve(state);
    if (solution.converged) keep(state, solution.elementA);
  }
  if (compiled.nets.nets.length === 0) return;
  const lit = [
    ...[...asked, ...best].slice(0, ALTERNATING_COUNT_MAX),
    ...alternatingStates(compiled),
  ];
  for (const state of lit.map((one) => ({ ...one, engine }))) {
    const elementA = alternating(compiled, state);
    if (elementA !== null) keep(state, elementA);
  }
}

/** Fastest speed any output is stated at, rpm; null where no generator's output is stated. */
function fastestRpm(job: Job): number | null {
  const speeds = presentParts(job).flatMap((part) =>
    part.kind === "generator"
      ? part.windings.flatMap(({ points }) => (points ?? []).map((point) => point.speedRpm))
      : [],
  );
  return speeds.length === 0 ? null : Math.max(RUNNING_RPM, ...speeds);
}

/**
 * Currents of a running state with its alternating nets, A: direct current and rms added in quadrature where both flow.
 * Null where it does not settle.
 */
function alternating(compiled: CompiledJob, state: QuickState): Float64Array | null {
  const { job, jobNetwork, elementOfConductor } = compiled;
  const read = readState(job, {
    set: state.positions ?? {},
    flash: state.flash ?? "off",
    ...(state.engine && { engine: state.engine }),
  });
  if (!read.ok) return null;
  const solved = solveState(compiled, read.state);
  if (!solved.converged) return null;
  const placeOf = new Map(jobNetwork.elements.map(({ id }, k) => [id, k]));
  const elementA = new Float64Array(jobNetwork.elements.length);
  const put = (place: number | undefined, currentA: number): void => {
    if (place !== undefined) elementA[place] = currentA;
  };
  for (const { id, currentA } of solved.elements) put(placeOf.get(id), currentA);
  for (const { elements } of solved.nets) {
    for (const { id, currentA } of elements) put(placeOf.get(id), currentA);
  }
  for (const { wire, currentA, acA } of solved.wires) {
    put(elementOfConductor.get(wire), Math.hypot(currentA, acA ?? 0));
  }
  return elementA;
}
