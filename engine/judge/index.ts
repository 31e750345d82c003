/** Judge: the whole flow from a job to a verdict, and one file for every question asked of a finished design. */

export { type CheckedJob, checkedJob, checkJob, recheckedJob } from "./checkJob.ts";
export type * from "./checkResult.ts";
export type { Design, Judge, PlacedRating } from "./judge.ts";
export { type Plan, planJob } from "./planJob.ts";
export { operateCommand, stateArguments, stateInWords } from "./stateArguments.ts";
export {
  type Conversion,
  type ConvertedBalance,
  type ConvertedFuse,
  type ConvertedWire,
  conversionOf,
} from "./supply/conversionOf.ts";
export { supplyOfJob } from "./supply/supplyOfJob.ts";
export { type WireFact, type WireFacts, wireFacts } from "./wireFacts.ts";
