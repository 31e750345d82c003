import { planJob, preparedProof } from "@copperwright/engine";
import { printProve } from "../print/printProve.ts";
import { proveInThreads, startThreads } from "../proveInThreads.ts";
import { refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";

const MS_PER_S = 1000;
/** A line of progress is printed no more often than this, ms. */
const TELL_EVERY_MS = 250;

/** `copperwright prove JOB [--json]`: every state, every open and every short. */
export async function proveCommand(
  world: World,
  path: string,
  options: { readonly json?: boolean },
): Promise<ExitCode> {
  const json = options.json ?? false;
  const read = readJobArgument(world, path);
  if (!read.ok) return refuse(world, read.refusals, { json, common: commonFields("prove", null) });
  world.err("Laying out the loom.\n");
  const threads = startThreads(read.job.wires.length);
  const input = preparedProof(planJob(read.job));
  const result = await proveInThreads(input, progressTold(world), threads);
  const answer = { ...commonFields("prove", read), refusals: [], ...result };
  world.out(json ? printJson(answer) : printProve(read.job, result));
  return result.verdict === "fit" ? 0 : 1;
}

/** Says how far the proof is and how long it will last at this pace. */
function progressTold(world: World): (doneRatio: number) => void {
  const startMs = Date.now();
  let toldMs = startMs;
  return (doneRatio) => {
    const nowMs = Date.now();
    if (nowMs - toldMs < TELL_EVERY_MS || doneRatio <= 0) return;
    toldMs = nowMs;
    const leftS = ((nowMs - startMs) * (1 / doneRatio - 1)) / MS_PER_S;
    world.err(`${Math.round(100 * doneRatio)} % done, about ${Math.ceil(leftS)} s left\n`);
  };
}
