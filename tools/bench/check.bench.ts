import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { readJob, writeJob } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";
import { ROOT } from "../sourceFiles.ts";
import { largeVehicle } from "./largeVehicle.ts";

const SEED = 20260101;
const LARGEST = "brenzach-twin";

function median(values: readonly number[]): number {
  const rising = [...values].sort((left, right) => left - right);
  return rising[Math.floor(rising.length / 2)]!;
}

/** Seconds a command of the shell takes from nothing, the middle one of five. */
function coldS(words: readonly string[]): number {
  const times = Array.from({ length: 5 }, () => {
    const from = performance.now();
    spawnSync(join(ROOT, "node_modules/.bin/copperwright"), words, { cwd: ROOT, stdio: "ignore" });
    return (performance.now() - from) / 1000;
  });
  return median(times);
}

/** Cold commands on the largest demo, and how checking grows with the number of wires. */
export async function run() {
  const scratch = mkdtempSync(join(tmpdir(), "copperwright-bench-"));
  const demo = join("demos", `${LARGEST}.json`);
  const figures = [
    {
      name: "check of the largest demo, cold start",
      value: coldS(["check", demo]),
      unit: "s",
      target: 1,
    },
    {
      name: "pack of the largest demo, cold start",
      value: coldS(["pack", demo, "--out", join(scratch, "pack")]),
      unit: "s",
      target: 3,
    },
  ];
  for (const wireCount of [150, 500, 1500, 5000]) {
    const job = largeVehicle(wireCount, SEED);
    const text = writeJob(job);
    writeFileSync(join(scratch, `${wireCount}.json`), text);
    const from = performance.now();
    const read = readJob(text);
    if (!read.ok) throw new Error(JSON.stringify(read.refusals.slice(0, 3)));
    const { statesSolved, verdict } = checkJob(read.job);
    const seconds = (performance.now() - from) / 1000;
    const name = `read and check ${job.wires.length} wires (seed ${SEED}): ${statesSolved} states, ${verdict}`;
    figures.push({
      name,
      value: seconds,
      unit: "s",
      ...(wireCount === 5000 ? { target: 10 } : {}),
    } as (typeof figures)[number]);
  }
  rmSync(scratch, { recursive: true, force: true });
  return figures;
}
