import { type Job, type Refusal, readJob } from "@copperwright/engine";
import { argumentRefusal } from "../refuse.ts";
import type { World } from "../world.ts";

/** A job file as an argument: read, upgraded, checked for sense; or every reason why not. */
export function readJobArgument(
  world: World,
  path: string,
): { ok: true; job: Job; fingerprint: string } | { ok: false; refusals: readonly Refusal[] } {
  const file = world.readText(path);
  if (!file.ok) {
    return {
      ok: false,
      refusals: [
        argumentRefusal(
          "JOB",
          path,
          `The job file could not be read: ${file.why}.`,
          "Give the path of a job file. `copperwright demo` lists ready jobs.",
        ),
      ],
    };
  }
  return readJob(file.text);
}
