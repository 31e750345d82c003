import {
  type OperateOptions,
  readOperateArguments,
} from "../../apps/cli/commands/operateArguments.ts";
import { PLANTED } from "../../cases/mutations/plantedFaults.ts";
import { DEMOS, type Demo, jobOfDemo, proofInputOf } from "../../cases/prove/proofOfDemo.ts";
import { seededRandom } from "../../engine/geometry/index.ts";
import { applyOperation, type Job, operateJob, proveJob } from "../../engine/index.ts";
import { comparedWithGroups } from "../../engine/prove/bruteForceForTests.ts";
import { comparedWithSurvival } from "../../engine/prove/faultsForTests.ts";
import { type ProofPlan, proofPlan } from "../../engine/prove/proofPlan.ts";
import { provedWires } from "../../engine/prove/provedWires.ts";
import { truthOf } from "../../engine/prove/truthOf.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

const SEED = 20;
/** (state, fault) pairs drawn over the full product of the two large machines together, half each. A million is the full size. */
const PAIR_COUNT = Number(process.env.PROVE_PAIRS ?? 40_000);
/** Full states drawn for each machine, a quarter of that with the engine running. */
const STATE_COUNT = Number(process.env.PROVE_STATES ?? 20_000);
const REPLAY_COUNT = Number(process.env.PROVE_REPLAYS ?? 1000);
/** Draws between two signs of life on the error channel. */
const TOLD_EVERY_COUNT = 5_000;
const LARGE = ["minazuru-four", "brenzach-twin"] as const;

const told = (words: string): void => void process.stderr.write(`    ${words}\n`);

/** The proof against draws over the full product, and every worst case against `operate`: all to come out without a disagreement. */
export async function run(): Promise<readonly Figure[]> {
  return [...LARGE.flatMap(bruteForce), ...replays()];
}

function bruteForce(name: Demo): readonly Figure[] {
  const plan = proofPlan(proofInputOf(jobOfDemo(name)));
  const truth = truthOf(plan, [...plan.states.keys()]);
  const random = seededRandom(SEED);
  const loads = plan.space.engines.map((engine) => {
    const share = engine.mode === "running" ? 1 / 4 : 1;
    const states = drawnStates(plan, engine, Math.ceil(STATE_COUNT * share), random);
    return comparedWithGroups(plan, truth.states, engine, states);
  });
  const wires = provedWires(plan, truth.tallies, [...plan.input.conductors.keys()]);
  const survivals = wires.judged.map(({ survival }) => survival);
  let [pairCount, checkCount, disagreedCount, turn] = [0, 0, 0, 0];
  while (pairCount < PAIR_COUNT / LARGE.length) {
    const draw = { pairCount: Math.min(TOLD_EVERY_COUNT, PAIR_COUNT / LARGE.length - pairCount) };
    // Every way the engine can stand takes its turn: a running generator adds to what the battery gives.
    const engine = plan.space.engines[turn++ % plan.space.engines.length]!;
    const part = comparedWithSurvival(plan, survivals, engine, { ...draw, random });
    pairCount += part.pairCount;
    checkCount += part.wireCheckCount;
    disagreedCount += part.disagreements.length;
    for (const one of part.disagreements) told(`${name}: ${one}`);
    told(`${name}: ${pairCount} pairs followed, ${disagreedCount} disagreed`);
  }
  const unit = "";
  const sum = (of: (one: (typeof loads)[number]) => number): number =>
    loads.reduce((total, one) => total + of(one), 0);
  return [
    {
      name: `${name}: loads compared in drawn states`,
      value: sum((one) => one.comparedCount),
      unit,
    },
    {
      name: `${name}: of these disagreed`,
      value: sum((one) => one.disagreements.length),
      unit,
      target: 0,
    },
    { name: `${name}: (state, fault) pairs followed to their end`, value: pairCount, unit },
    { name: `${name}: wires over their fuses' rating looked at`, value: checkCount, unit },
    { name: `${name}: of these disagreed`, value: disagreedCount, unit, target: 0 },
  ];
}

const drawnStates = (
  { space }: ProofPlan,
  engine: ProofPlan["space"]["engines"][number],
  count: number,
  random: () => number,
) =>
  Array.from({ length: count }, () =>
    Object.fromEntries(
      space.variables.map(({ id, positions }) => [
        id,
        positions[Math.floor(random() * positions.length)]!,
      ]),
    ),
  ).filter((full) => space.completed(full, engine) !== null);

/** Worst cases of the demos, then of the demos with a fault planted, each handed to `operate` by its own arguments. */
function replays(): readonly Figure[] {
  let replayedCount = 0;
  let largestOffA = 0;
  for (const job of jobsToReplay()) {
    const input = proofInputOf(job);
    const { wires } = proveJob(input, { tryRemedies: false });
    for (const { wire, worst, reproduce } of wires) {
      if (replayedCount >= REPLAY_COUNT || worst === null || reproduce === null) continue;
      const currentA = replayedA(input, wire, reproduce);
      largestOffA = Math.max(largestOffA, Math.abs(currentA - worst.currentA));
      replayedCount++;
    }
    told(`${job.id}: ${replayedCount} replayed, off by ${largestOffA} A at most`);
    if (replayedCount >= REPLAY_COUNT) break;
  }
  return [
    { name: "worst cases replayed by their own arguments", value: replayedCount, unit: "" },
    { name: "largest difference of their currents", value: largestOffA, unit: "A", target: 1e-9 },
  ];
}

function* jobsToReplay(): Generator<Job> {
  for (const name of DEMOS) yield jobOfDemo(name);
  for (const name of DEMOS) {
    for (const { operations } of PLANTED[name]) {
      const applied = applyOperation(jobOfDemo(name), { op: "batch", name: "planted", operations });
      if (applied.ok) yield applied.job;
    }
  }
}

function replayedA(
  input: ReturnType<typeof proofInputOf>,
  wire: string,
  reproduce: readonly string[],
): number {
  const read = readOperateArguments(optionsOf(reproduce));
  if (!read.ok) return Number.POSITIVE_INFINITY;
  const operated = operateJob(input.job, input.conductors, read.request);
  if (!operated.ok) return Number.POSITIVE_INFINITY;
  const row = operated.solution.wires.find((one) => one.wire === wire)!;
  return Math.abs(row.currentA);
}

/** `operate JOB --set A=B --set C=D …` as the command line hands it over. */
export function optionsOf(words: readonly string[]): OperateOptions {
  const lists: Record<string, string[]> = { set: [], held: [], open: [], short: [] };
  const singles: Record<string, string> = {};
  for (let k = 2; k < words.length; k += 2) {
    const name = words[k]!.slice(2);
    if (name in lists) lists[name]!.push(words[k + 1]!);
    else singles[name] = words[k + 1]!;
  }
  return { ...lists, ...singles };
}
