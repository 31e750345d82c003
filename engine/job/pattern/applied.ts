import type { Operation } from "../edit/operation.ts";
import type { Job } from "../job.ts";

/**
 * A job with an addition or a whole field set, without checking it: while a pattern is put together the job need not be readable yet. What the pattern
 * makes in the end is applied and checked like any edit.
 */
export function applied(job: Job, operation: Operation): Job {
  if (operation.op === "batch") return operation.operations.reduce(applied, job);
  if (operation.op === "add") {
    return { ...job, [operation.list]: [...job[operation.list], operation.item] };
  }
  if (operation.op === "remove") {
    const kept = job[operation.list].filter(({ id }) => id !== operation.id);
    return { ...job, [operation.list]: kept };
  }
  const [field] = operation.path;
  if (operation.list === "job" || field === undefined || operation.path.length !== 1) return job;
  const items = job[operation.list].map((item) =>
    item.id === operation.id ? { ...item, [field]: operation.value } : item,
  );
  return { ...job, [operation.list]: items };
}
