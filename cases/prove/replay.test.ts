import { describe, expect, test } from "vitest";
import {
  type OperateOptions,
  readOperateArguments,
} from "../../apps/cli/commands/operateArguments.ts";
import { operateJob, proveJob } from "../../engine/index.ts";
import { DEMOS, jobOfDemo, proofInputOf } from "./proofOfDemo.ts";

/** Contract: replaying a worst case by its own arguments gives the same current. */
const SAME_A = 1e-9;

/** `operate JOB --set A=B --set C=D …` as the command line hands it over. */
function optionsOf(words: readonly string[]): OperateOptions {
  const lists: Record<string, string[]> = { set: [], held: [], open: [], short: [] };
  const singles: Record<string, string> = {};
  for (let k = 2; k < words.length; k += 2) {
    const name = words[k]!.slice(2);
    if (name in lists) lists[name]!.push(words[k + 1]!);
    else singles[name] = words[k + 1]!;
  }
  return { ...lists, ...singles };
}

describe.each(DEMOS)("%s", (name) => {
  test("every worst case replays to the same current", () => {
    const input = proofInputOf(jobOfDemo(name));
    const { wires } = proveJob(input);
    let replayedCount = 0;
    for (const { wire, worst, reproduce } of wires) {
      if (worst === null || reproduce === null) continue;
      const read = readOperateArguments(optionsOf(reproduce));
      expect(read.ok).toBe(true);
      if (!read.ok) continue;
      const operated = operateJob(input.job, input.conductors, read.request);
      expect(operated.ok && operated.solution.converged).toBe(true);
      if (!operated.ok) continue;
      const row = operated.solution.wires.find((one) => one.wire === wire)!;
      expect(Math.abs(Math.abs(row.currentA) - worst.currentA)).toBeLessThanOrEqual(SAME_A);
      replayedCount++;
    }
    expect(replayedCount).toBeGreaterThan(10);
  }, 600_000);
});
