import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { proveInThreads, startThreads } from "../../apps/cli/proveInThreads.ts";
import { DEMOS, jobOfDemo, proofInputOf } from "../../cases/prove/proofOfDemo.ts";
import { seededRandom } from "../../engine/geometry/index.ts";
import { proofPlan } from "../../engine/prove/proofPlan.ts";
import { statesToScreen } from "../../engine/prove/provePart.ts";
import { screenedShorts } from "../../engine/prove/screenedShorts.ts";
import { truthOf } from "../../engine/prove/truthOf.ts";
import { ROOT } from "../sourceFiles.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

const WHOLE_PROOF_S = 2;
const SCREENED_PER_S = 3_000_000;
const FULL_PER_S = 100_000;
const SEED = 20;
/** Shorts solved in full to find the rate. */
const FULL_COUNT = 20_000;

const seconds = async (work: () => unknown): Promise<number> => {
  const start = performance.now();
  await work();
  return (performance.now() - start) / 1000;
};

export async function run(): Promise<readonly Figure[]> {
  spawnSync(process.execPath, ["--import", "tsx", join(ROOT, "tools/build.ts")], { cwd: ROOT });
  return [...(await wholeProofs()), ...(await rates())];
}

/** Command as shipped: two threads, the second started for the occasion; sizing not counted. */
async function wholeProofs(): Promise<readonly Figure[]> {
  const worker = pathToFileURL(join(ROOT, "apps/cli/dist/proveWorker.mjs"));
  const figures: Figure[] = [];
  for (const name of DEMOS) {
    const input = proofInputOf(jobOfDemo(name));
    const first = await seconds(() =>
      proveInThreads(input, () => {}, startThreads(input.job.wires.length, worker)),
    );
    const again = await seconds(() =>
      proveInThreads(input, () => {}, startThreads(input.job.wires.length, worker)),
    );
    const unit = "s";
    figures.push({
      name: `whole proof of ${name}, two threads, cold`,
      value: first,
      unit,
      target: WHOLE_PROOF_S,
    });
    figures.push({
      name: `whole proof of ${name}, two threads, warm`,
      value: again,
      unit,
      target: WHOLE_PROOF_S,
    });
  }
  return figures;
}

async function rates(): Promise<readonly Figure[]> {
  const plan = proofPlan(proofInputOf(jobOfDemo("brenzach-twin")));
  const { tallies } = truthOf(plan, [...plan.states.keys()]);
  const states = statesToScreen(tallies);
  const { compiled } = plan.solver;
  let count = 0;
  const screenS = await seconds(() => {
    count = screenedShorts(plan, compiled, states).screenedCount;
  });
  const random = seededRandom(SEED);
  const { names } = compiled.jobNetwork.nodes;
  const pins = names.filter((name) => !name.endsWith("~"));
  const faults = Array.from({ length: FULL_COUNT }, () => ({
    ...states[Math.floor(random() * states.length)]!,
    short: [{ a: pins[Math.floor(random() * pins.length)]!, b: names[0]!, ohm: 0.01 }],
  })).filter(({ short }) => short[0]!.a !== short[0]!.b);
  const fullS = await seconds(() => {
    for (const fault of faults) compiled.solve(fault);
  });
  const unit = "per second";
  return [
    {
      name: "shorts screened and tallied, one thread, big twin",
      value: count / screenS,
      unit,
      target: SCREENED_PER_S,
    },
    {
      name: "shorts solved in full through the job, one thread, big twin",
      value: faults.length / fullS,
      unit,
      target: FULL_PER_S,
    },
  ];
}
