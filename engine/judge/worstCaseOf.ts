import { type Job, loadsOf, presentParts } from "../job/index.ts";
import {
  type CompiledJob,
  compileJob,
  conditionsOf,
  operateJob,
  type QuickState,
  RUNNING_RPM,
} from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { type CurrentTally, currentsOf, newTally, tallyUp, worstStates } from "./currentTally.ts";
import { declaredStates } from "./declaredStates.ts";
import { loadTally } from "./loadTally.ts";
import { type FullState, searchStates } from "./searchStates.ts";
import type { ShortedState, WorstCase } from "./worstCase.ts";

/** Bounds the search for worst states, in solves. */
const SOLVE_COUNT_MAX = 350;
/** Bounds the states with the engine running, and those whose alternating nets are solved: they are dearer. */
const RUNNING_COUNT_MAX = 6;
const ALTERNATING_COUNT_MAX = 3;
/** A starter that draws more than this is cranking, A. */
const CRANKING_A = 5;
/** A battery that gives this many times what all loads together are rated for, and a margin, with no starter turning, is shorted. */
const SHORTED_RATIO = 1.5;
const SHORTED_A = 10;
/** Elements whose largest current steers the search. */
const STEERING: ReadonlySet<string> = new Set(["wire", "contact", "fuse"]);

interface Met {
  readonly state: QuickState;
  readonly batteryV: number | null;
}

interface Tallies {
  readonly lasting: CurrentTally;
  readonly cranking: CurrentTally;
  readonly met: Met[];
}

/**
 * The largest currents and drops of a job: a search on the full battery finds the worst states (and every drop), those are
 * solved again with the battery held at the regulator's volts, then some with the engine running.
 */
export function worstCaseOf(job: Job, conductors: Conductors, compiled: CompiledJob): WorstCase {
  const { elements } = compiled.jobNetwork;
  const tallies = {
    lasting: newTally(elements.length),
    cranking: newTally(elements.length),
    met: [] as Met[],
  };
  const starters = startersOf(compiled);
  const turns = (elementA: Float64Array): boolean =>
    starters.some((k) => Math.abs(elementA[k]!) > CRANKING_A);
  const loads = loadTally(compiled);
  const shortedA = shortGauge(compiled);
  const shorted: ShortedState[] = [];
  const worst = (): readonly number[] => [
    ...worstStates(tallies.lasting, elements, STEERING),
    ...worstStates(tallies.cranking, elements, STEERING),
  ];
  const search = searchStates(compiled, {
    watch: (state, solution, index) => {
      tallies.met[index] = { state: plain(state), batteryV: null };
      const starterTurns = turns(solution.elementA);
      const shortA = starterTurns ? 0 : shortedA(solution.elementA);
      if (shortA > 0) {
        const contacts = contactsOver(elements, solution.elementA, shortA / 2);
        shorted.push({ state: plain(state), currentA: shortA, contacts });
        return;
      }
      const isStart = starterTurns || state.asIf === "cranking";
      tallyUp(isStart ? tallies.cranking : tallies.lasting, solution.elementA, index);
      loads.watch(state, solution, starterTurns);
    },
    worstIndices: worst,
    solveCountMax: SOLVE_COUNT_MAX,
  });
  const best = [...worstStates(tallies.lasting, elements, STEERING)].map((k) => search.states[k]!);
  charged(job, conductors, best, tallies);
  running(compiled, best, tallies);
  const named = (tally: CurrentTally, kind: string) =>
    currentsOf(tally, elements, kind, (index) => tallies.met[index]!);
  return {
    conductors: named(tallies.lasting, "wire"),
    crankingConductors: named(tallies.cranking, "wire"),
    fuses: named(tallies.lasting, "fuse"),
    crankingFuses: named(tallies.cranking, "fuse"),
    contacts: named(tallies.lasting, "contact"),
    crankingContacts: named(tallies.cranking, "contact"),
    joints: named(tallies.lasting, "joint"),
    loads: loads.seen(),
    shorted,
    stateCount: tallies.met.length,
    complete: search.complete,
  };
}

/** Answers what the battery gives where that can only be a short, A; else 0. */
function shortGauge({ job, jobNetwork }: CompiledJob): (elementA: Float64Array) => number {
  const { nominalV } = job.supply;
  const coilsA = jobNetwork.elements.map(({ kind, law }) =>
    kind === "coil" && law.kind === "ohm" ? nominalV / law.ohm : 0,
  );
  const loadsA = loadsOf(job)
    .filter(({ part }) => part.kind !== "coil")
    .filter(({ part }) => part.kind !== "motor" || part.use !== "starter")
    .map(({ ratedW, resistanceOhm }) => (ratedW ?? nominalV ** 2 / resistanceOhm!) / nominalV);
  const allA = [...coilsA, ...loadsA].reduce((sum, one) => sum + one, 0);
  const batteries = jobNetwork.elements.flatMap(({ kind }, k) => (kind === "emf" ? [k] : []));
  return (elementA) => {
    const currentA = Math.max(0, ...batteries.map((k) => Math.abs(elementA[k]!)));
    return currentA > SHORTED_RATIO * allA + SHORTED_A ? currentA : 0;
  };
}

const contactsOver = (
  elements: CompiledJob["jobNetwork"]["elements"],
  elementA: Float64Array,
  currentA: number,
): readonly string[] =>
  elements.flatMap(({ kind, of }, k) =>
    kind === "contact" && Math.abs(elementA[k]!) > currentA ? [of] : [],
  );

const plain = ({ positions, engine, flash }: FullState): QuickState => ({
  positions,
  engine,
  flash,
});

/** The worst states once more, with the battery held at the volts the machine charges with. */
function charged(
  job: Job,
  conductors: Conductors,
  states: readonly FullState[],
  tallies: Tallies,
): void {
  const volts = chargingV(job);
  if (volts === null) return;
  const conditions = conditionsOf(job, { battery: { emfV: volts } });
  const { solve } = compileJob(job, conductors, { conditions });
  for (const state of states) {
    const solution = solve(state);
    if (!solution.converged) continue;
    tallies.met.push({ state: plain(state), batteryV: volts });
    tallyUp(tallies.lasting, solution.elementA, tallies.met.length - 1);
  }
}

/** What the regulator is set to, V; null where nothing charges the battery. */
export function chargingV(job: Job): number | null {
  const setsV = presentParts(job).flatMap((part) =>
    part.kind === "regulator" && part.type !== "ac-shunt" ? [part.setV.value] : [],
  );
  return setsV.length === 0 ? null : Math.max(...setsV);
}

/** Charging leads and alternating nets carry nothing until the engine runs. */
function running(compiled: CompiledJob, best: readonly FullState[], tallies: Tallies): void {
  const { job } = compiled;
  const speedRpm = fastestRpm(job);
  if (speedRpm === null) return;
  const engine = { mode: "running" as const, speedRpm };
  const declared = declaredStates(job).map(({ state }) => state);
  const asked = declared.filter((state) => state.engine?.mode === "running");
  const states = [...best.map(plain).slice(0, RUNNING_COUNT_MAX), ...asked]
    .slice(0, RUNNING_COUNT_MAX)
    .map((state) => ({ ...state, engine }));
  const keep = (state: QuickState, elementA: Float64Array): void => {
    tallies.met.push({ state, batteryV: null });
    tallyUp(tallies.lasting, elementA, tallies.met.length - 1);
  };
  for (const state of states) {
    const solution = compiled.solve(state);
    if (solution.converged) keep(state, solution.elementA);
  }
  if (compiled.nets.nets.length === 0) return;
  const lit = [...asked, ...best.map(plain)].slice(0, ALTERNATING_COUNT_MAX);
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

/** Currents of a running state with its alternating nets, A rms; null where it does not settle. */
function alternating(compiled: CompiledJob, state: QuickState): Float64Array | null {
  const { job, conductors, jobNetwork } = compiled;
  const operated = operateJob(job, conductors, {
    set: state.positions ?? {},
    flash: state.flash ?? "off",
    ...(state.engine && { engine: state.engine }),
  });
  if (!operated.ok || !operated.solution.converged) return null;
  const placeOf = new Map(jobNetwork.elements.map(({ id }, k) => [id, k]));
  const elementA = new Float64Array(jobNetwork.elements.length);
  for (const { id, currentA } of operated.solution.elements) {
    const place = placeOf.get(id);
    if (place !== undefined) elementA[place] = currentA;
  }
  return elementA;
}

function startersOf({ job, jobNetwork }: CompiledJob): readonly number[] {
  const starters = new Set(
    presentParts(job)
      .filter((part) => part.kind === "motor" && part.use === "starter")
      .map((part) => part.id),
  );
  return jobNetwork.elements.flatMap(({ of, kind }, k) =>
    kind !== "wire" && of.includes(":") && starters.has(of.split(":")[0] ?? "") ? [k] : [],
  );
}
