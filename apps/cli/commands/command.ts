import { ENGINE_VERSION, type Job } from "@copperwright/engine";

/** First fields of every `--json` answer. `job` is null where no job was read. */
export function commonFields(
  name: string,
  job: { readonly job: Job; readonly fingerprint: string } | null,
): Readonly<Record<string, unknown>> {
  return {
    contract: `copperwright/${name}/1`,
    engineVersion: ENGINE_VERSION,
    job:
      job === null
        ? null
        : {
            id: job.job.id,
            name: job.job.name,
            revision: job.job.revision,
            fingerprint: job.fingerprint,
          },
  };
}

/** One JSON object on stdout, keys as given, two-space free so that a hundred wires stay readable by machine and man. */
export function printJson(answer: unknown): string {
  return `${JSON.stringify(answer, null, 1)}\n`;
}
