import { readFileSync } from "node:fs";
import { join } from "node:path";
import type { Job } from "../../engine/job/index.ts";
import { routeJob } from "../../engine/route/index.ts";
import { cheapestSizes, sizeJob } from "../../engine/size/index.ts";
import { twoTrees } from "../../engine/size/twoTrees.fixture.ts";
import { ROOT } from "../sourceFiles.ts";

interface Figure {
  readonly name: string;
  readonly value: number;
  readonly unit: string;
  readonly target?: number;
}

const SEEDS = [1, 2, 3, 4, 5];

function sortedMs(works: readonly (() => unknown)[]): readonly number[] {
  for (const work of works) work();
  return works
    .map((work) => {
      const from = performance.now();
      work();
      return performance.now() - from;
    })
    .sort((a, b) => a - b);
}

/** About 150 wires under volt-drop budgets: loads on a tree of feeds, earths shared or not. */
function exact(returnCount: number, target?: number): readonly Figure[] {
  const problems = SEEDS.map((seed) =>
    twoTrees({ seed, loadCount: 62, feedCount: 26, returnCount }),
  );
  const solved = problems.map((problem) => cheapestSizes(problem));
  const timesMs = sortedMs(problems.map((problem) => () => cheapestSizes(problem)));
  const label = `${problems[0]!.wires.size} wires, ${returnCount} shared earths:`;
  const goal = target === undefined ? {} : { target };
  return [
    { name: `${label} middle of ${SEEDS.length}`, value: timesMs[2]!, unit: "ms", ...goal },
    { name: `${label} slowest`, value: timesMs.at(-1)!, unit: "ms" },
    {
      name: `${label} proven the cheapest`,
      value: solved.filter((one) => one.exact).length,
      unit: `of ${SEEDS.length}`,
    },
  ];
}

/** A whole reference machine sized, currents included. */
function machine(id: string): readonly Figure[] {
  const text = readFileSync(join(ROOT, `cases/reference-machines/${id}/job.json`), "utf8");
  const stated = JSON.parse(text) as Job;
  const job: Job = { ...stated, wires: stated.wires.map(({ size: _, ...rest }) => rest) };
  const routed = routeJob(job);
  const [first, ...rest] = sortedMs(Array.from({ length: 5 }, () => () => sizeJob(job, routed)));
  const middle = [first!, ...rest][2]!;
  return [
    {
      name: `reference machine ${id}, ${job.wires.length} wires, all unsized: sizing`,
      value: middle,
      unit: "ms",
    },
    {
      name: `reference machine ${id}: routing`,
      value: sortedMs([() => routeJob(job)])[0]!,
      unit: "ms",
    },
  ];
}

/** How long sizing takes; that it is right is the tests' business. */
export async function run(): Promise<readonly Figure[]> {
  return [...exact(0, 50), ...exact(3), ...exact(8), ...machine("c"), ...machine("e")];
}
