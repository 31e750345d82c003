export type * from "./job.ts";
export { JOB_VERSION, jobSchema } from "./jobSchema.ts";
