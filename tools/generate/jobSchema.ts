import { jobJsonSchema } from "../../engine/job/index.ts";

/** The published JSON Schema of the job document, as path and text. */
export function generateJobSchema(): ReadonlyMap<string, string> {
  const text = `${JSON.stringify(jobJsonSchema(), null, 2)}\n`;
  return new Map([["docs/reference/job.schema.json", text]]);
}
