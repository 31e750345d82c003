import { execFile } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import type { CompiledJob } from "../../engine/operate/compileJob.ts";
import type { OperateState } from "../../engine/operate/index.ts";
import { prepare } from "../../engine/operate/operateJob.ts";
import { type SolvedState, solveState } from "../../engine/operate/solveState.ts";
import { spiceOf } from "../../engine/operate/spiceText.ts";
import type { Drawn } from "./drawStates.ts";

export interface Compared {
  readonly drawn: Drawn;
  readonly solution: SolvedState;
  /** Largest difference over the pins that do not float, V, and the pin; null: the simulator itself found no operating point. */
  readonly awayV: number | null;
  readonly pin: string;
  readonly pinCount: number;
}

/**
 * Solves a state both ways. Null where our own answer is that the state does not come to rest: a buzzing relay has no operating
 * point to compare.
 */
export async function compareState(drawn: Drawn): Promise<Compared | null> {
  const { compiled, state } = laidOut(drawn);
  const solution = solveState(compiled, state);
  if (!solution.converged) return null;
  const text = spiceOf(compiled, state, drawn.relays);
  const volts = await simulatedVolts(text);
  if (volts === null) return { drawn, solution, awayV: null, pin: "", pinCount: 0 };
  const isAlternating = solution.state.engine.mode === "running";
  let [awayV, pin, pinCount] = [0, "", 0];
  for (const row of solution.pins) {
    if (row.v === null || row.node === "0" || (isAlternating && row.net !== "dc")) continue;
    pinCount++;
    const oneV = Math.abs(row.v - (volts.get(row.node) ?? Number.POSITIVE_INFINITY));
    if (oneV > awayV) [awayV, pin] = [oneV, row.pin];
  }
  return { drawn, solution, awayV, pin, pinCount };
}

/** What `operateJob` and `spiceText` both start from: the job laid out once, and the state in full. */
function laidOut({ machine, request }: Drawn): {
  readonly compiled: CompiledJob;
  readonly state: OperateState;
} {
  const prepared = prepare(machine.job, machine.conductors, request);
  if (!prepared.ok) throw new Error(`refused: ${JSON.stringify(request)}`);
  return prepared;
}

/** Node volts by name, from one process of the simulator; null where it gives up. */
export function simulatedVolts(text: string): Promise<ReadonlyMap<string, number> | null> {
  const folder = mkdtempSync(join(tmpdir(), "simulated-"));
  const path = join(folder, "state.cir");
  writeFileSync(path, text);
  return new Promise((resolve, reject) => {
    execFile("ngspice", ["-b", path], { encoding: "utf8" }, (error, stdout, stderr) => {
      rmSync(folder, { recursive: true });
      const volts = [...stdout.matchAll(/^(n\d+) = (\S+)/gm)].map(
        ([, node, value]) => [node!, Number(value)] as const,
      );
      if (volts.length > 0) resolve(new Map(volts));
      else if (/no convergence|failed|aborted/i.test(stderr + stdout)) resolve(null);
      else
        reject(new Error(`the simulator said: ${error?.message ?? ""} ${stderr.slice(0, 2000)}`));
    });
  });
}

/** Runs tasks two at a time, in order of the list; answers in that order. */
export async function twoAtATime<Task, Answer>(
  tasks: readonly Task[],
  run: (task: Task) => Promise<Answer>,
): Promise<readonly Answer[]> {
  const answers: Answer[] = [];
  let next = 0;
  const worker = async (): Promise<void> => {
    while (next < tasks.length) {
      const k = next++;
      answers[k] = await run(tasks[k]!);
    }
  };
  await Promise.all([worker(), worker()]);
  return answers;
}
