import { type Job, presentParts } from "../job/index.ts";
import { type CompiledJob, compileJob, conditionsOf, type QuickState } from "../operate/index.ts";
import type { Conductors } from "../route/index.ts";
import { type CurrentTally, currentsOf, newTally, tallyUp, worstStates } from "./currentTally.ts";
import { fuseLoads, stageOf } from "./fuseLoads.ts";
import { loadTally } from "./loadTally.ts";
import { runningCurrents } from "./runningCurrents.ts";
import { type FullState, searchStates } from "./searchStates.ts";
import { shortGauge } from "./shortGauge.ts";
import type { Currents, ShortedState, WorstCase } from "./worstCase.ts";

/** Bounds the search for worst states, in solves. */
const SOLVE_COUNT_MAX = 350;
/** A starter that draws more than this is cranking, A. */
const CRANKING_A = 5;
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
  const shortOf = shortGauge(compiled);
  const shorted: ShortedState[] = [];
  const worst = (): readonly number[] => [
    ...worstStates(tallies.lasting, elements, STEERING),
    ...worstStates(tallies.cranking, elements, STEERING),
  ];
  const search = searchStates(compiled, {
    watch: (state, solution, index) => {
      tallies.met[index] = { state: plain(state), batteryV: null };
      const starterTurns = turns(solution.elementA);
      const short = starterTurns ? null : shortOf(state, solution.elementA);
      if (short !== null) {
        shorted.push(short);
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
  const fullA = stageOf(tallies.lasting);
  charged(job, conductors, best, tallies);
  const chargedA = stageOf(tallies.lasting);
  runningCurrents(compiled, best.map(plain), (state, elementA) => {
    tallies.met.push({ state, batteryV: null });
    tallyUp(tallies.lasting, elementA, tallies.met.length - 1);
  });
  const stages = { fullA, chargedA, runningA: tallies.lasting.mostA };
  const found = namedCurrents(compiled, tallies);
  return {
    ...found,
    fuses: fuseLoads(job, compiled, stages, { chargedV: chargingV(job), charged: found.fuses }),
    loads: loads.seen(),
    shorted,
    stateCount: tallies.met.length,
    complete: search.complete,
  };
}

function namedCurrents({ jobNetwork }: CompiledJob, { lasting, cranking, met }: Tallies) {
  const named = (tally: CurrentTally, kind: string): Currents =>
    currentsOf(tally, jobNetwork.elements, kind, (index) => met[index]!);
  return {
    conductors: named(lasting, "wire"),
    crankingConductors: named(cranking, "wire"),
    fuses: named(lasting, "fuse"),
    crankingFuses: named(cranking, "fuse"),
    contacts: named(lasting, "contact"),
    crankingContacts: named(cranking, "contact"),
    joints: named(lasting, "joint"),
  };
}

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
