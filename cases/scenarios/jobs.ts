import { readFileSync } from "node:fs";
import { applyOperation, type Job, type Operation, readJob } from "../../engine/job/index.ts";
import type { CheckResult, SpokenFinding } from "../../engine/judge/index.ts";

/** A reference machine of the cases, after some edits. */
export function machine(name: string, ...edits: readonly Operation[]): Job {
  const path = new URL(`../reference-machines/${name}/job.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error(read.refusals.map(({ message }) => message).join("\n"));
  return edits.reduce((job, edit) => {
    const applied = applyOperation(job, edit);
    if (!applied.ok) throw new Error(applied.refusals.map(({ message }) => message).join("\n"));
    return applied.job;
  }, read.job);
}

/** The one finding of a code, on a subject where that is said. */
export function only({ findings }: CheckResult, code: string, subject?: string): SpokenFinding {
  const found = findings.filter(
    (one) => one.code === code && (subject ?? one.subject.id) === one.subject.id,
  );
  if (found.length !== 1)
    throw new Error(`${found.length} findings ${code} on ${subject ?? "any"}`);
  return found[0]!;
}

export const codesOf = ({ findings }: CheckResult): readonly string[] =>
  findings.map(({ code }) => code);

/** A wire to be added, of stated length. */
export function newWire(
  id: string,
  ends: readonly [string, string],
  as: { readonly circuit: string; readonly make: string; readonly lengthMm: number },
): Operation {
  return {
    op: "add",
    list: "wires",
    item: {
      id,
      from: ends[0],
      to: ends[1],
      circuit: as.circuit,
      status: "new",
      size: { make: as.make, basis: "chosen" },
      lengthMm: { value: as.lengthMm, basis: "estimated" },
    },
  };
}
