import { checkJob } from "@copperwright/engine";
import { printCheck } from "../print/printCheck.ts";
import { refuse } from "../refuse.ts";
import type { ExitCode, World } from "../world.ts";
import { commonFields, printJson } from "./command.ts";
import { readJobArgument } from "./jobArgument.ts";

/** `copperwright check JOB [--json]`: verdict and findings. */
export function checkCommand(
  world: World,
  path: string,
  options: { readonly json?: boolean },
): ExitCode {
  const json = options.json ?? false;
  const read = readJobArgument(world, path);
  if (!read.ok) return refuse(world, read.refusals, { json, common: commonFields("check", null) });
  const result = checkJob(read.job);
  const answer = { ...commonFields("check", read), refusals: [], ...result };
  world.out(json ? printJson(answer) : printCheck(read.job, result));
  return result.verdict === "fit" ? 0 : 1;
}
