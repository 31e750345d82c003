import { type Job, presentParts } from "../job/index.ts";
import { type CompiledJob, operateJob, restPositions } from "../operate/index.ts";
import { type DutySwitches, dutySwitches } from "./dutySwitches.ts";
import { type PlacedLoad, placedLoads, workingRefs } from "./workingLoads.ts";

/** One way the machine is ridden: switches as they stand for long; brake, indicators and points are counted by their duty. */
export interface LightingState {
  readonly id: string;
  readonly name: string;
  readonly positions: Readonly<Record<string, string>>;
  /** Loads that work in it, brake and indicator lamps left out. */
  readonly working: readonly string[];
}

/**
 * Every lighting state the job's named states lead to: buttons let go, brake and indicators at rest, points closed, the engine
 * taken as running. Two states in which the same loads work are one. A machine sparked by its battery is ridden only where
 * a coil is fed.
 */
export function lightingStates(compiled: CompiledJob): {
  readonly states: readonly LightingState[];
  readonly duty: DutySwitches;
} {
  const { job } = compiled;
  const named = job.states.filter((state) => state.engine?.mode !== "cranking");
  const loads = placedLoads(compiled);
  const starts = named.map((state) => released(job, state.positions));
  // Tried from the states as named, where tell-tales of the machine's own switches show what else a key works.
  const asNamed = named.map(({ positions }) => ({
    ...restPositions(job, "stopped"),
    ...positions,
  }));
  const duty = dutySwitches(compiled, asNamed);
  const moved = [...duty.stop, ...duty.turn];
  const candidates = named.map((state, k): Candidate => {
    const positions = { ...starts[k]! };
    for (const { part } of moved) positions[part] = restOf(job, part);
    for (const { part, position } of duty.points) positions[part] = position;
    const working = workingIn(compiled, loads, positions).filter(
      (ref) => !duty.stopRefs.has(ref) && !duty.flashRefs.has(ref),
    );
    const isAsNamed = moved.every(({ part }) => state.positions[part] === undefined);
    const isRidden = state.engine?.mode === "running";
    const isPlain = isAsNamed && !hasButton(job, state.positions);
    const rankIndex = (isRidden ? 0 : 1) + (isPlain ? 0 : 2);
    const name = isPlain ? state.name : `as in "${state.name}", nothing pressed`;
    return { id: state.id, name, positions, working: working.sort(), rankIndex };
  });
  const stops = candidates.map(({ positions }) => canStop(compiled, loads, positions, duty));
  const ridable = candidates.filter(
    ({ working }, k) => isFed(job, working) && (stops[k] || !stops.includes(true)),
  );
  ridable.sort((a, b) => a.rankIndex - b.rankIndex || (a.id < b.id ? -1 : 1));
  const states: LightingState[] = [];
  for (const { rankIndex: _, ...state } of ridable) {
    const isLit = state.working.some((ref) => isLamp(job, ref));
    if (states.some((other) => other.working.join() === state.working.join())) continue;
    states.push(isLit ? state : { ...state, name: "lights off" });
  }
  return { states, duty };
}

interface Candidate extends LightingState {
  /** Lowest first: states named for riding, states that needed no change. */
  readonly rankIndex: number;
}

/** What works with the switches so; a machine with a lighting coil is asked with its engine running. */
function workingIn(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  positions: Readonly<Record<string, string>>,
): string[] {
  const { job, conductors, nets } = compiled;
  const direct = workingRefs(compiled, loads, compiled.solve({ positions }));
  if (!nets.nets.some(({ use }) => use === "lighting")) return [...direct];
  const engine = { mode: "running", speedRpm: FAST_RPM } as const;
  const operated = operateJob(job, conductors, { set: positions, engine });
  if (!operated.ok) return [...direct];
  const alternating = operated.solution.lamps.filter(({ kind, lit }) => kind === "ac" && lit);
  return [...new Set([...direct, ...alternating.map((row) => `${row.part}:${row.filament}`)])];
}

/** Fast enough for any lighting coil to light its lamps, rpm. */
const FAST_RPM = 5000;

/** Whether the brake lamp can be lit in these positions: a machine is not ridden with its key where the brake lamp is dead. */
function canStop(
  compiled: CompiledJob,
  loads: readonly PlacedLoad[],
  positions: Readonly<Record<string, string>>,
  { stop, stopRefs }: DutySwitches,
): boolean {
  return stop.some(({ part, position }) => {
    const solution = compiled.solve({ positions: { ...positions, [part]: position } });
    return [...workingRefs(compiled, loads, solution)].some((ref) => stopRefs.has(ref));
  });
}

const restOf = (job: Job, part: string): string => restPositions(job, "running")[part]!;

/** A named state with its buttons let go and its engine switches as while running. */
function released(job: Job, set: Readonly<Record<string, string>>): Record<string, string> {
  const positions: Record<string, string> = { ...restPositions(job, "running"), ...set };
  for (const part of presentParts(job)) {
    if (part.kind !== "switch") continue;
    if (part.momentary === true) positions[part.id] = part.rest;
    // Ridden in gear and off the stand: whatever the machine itself works is at rest.
    if (part.driven === "machine") positions[part.id] = part.rest;
    if (part.driven !== "engine") continue;
    const running = part.follows?.running ?? part.positions.find(({ id }) => id === "RUNNING")?.id;
    if (running !== undefined) positions[part.id] = running;
  }
  return positions;
}

const hasButton = (job: Job, set: Readonly<Record<string, string>>): boolean =>
  presentParts(job).some(
    (part) => part.kind === "switch" && part.momentary === true && set[part.id] !== undefined,
  );

const isLamp = (job: Job, ref: string): boolean =>
  job.parts.some((part) => part.kind === "lamp" && ref.startsWith(`${part.id}:`));

/** A machine sparked by its battery runs only where a coil is fed. */
function isFed(job: Job, working: readonly string[]): boolean {
  if (job.supply.ignition !== "battery-coil" && job.supply.ignition !== "electronic") return true;
  const coils = presentParts(job).filter(({ kind }) => kind === "coil");
  return (
    coils.length === 0 || coils.some(({ id }) => working.some((ref) => ref.startsWith(`${id}:`)))
  );
}
