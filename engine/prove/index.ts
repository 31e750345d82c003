/** Prove: every state, every open and every short, and whether each wire outlives it. */
export {
  type FaultStage,
  type FaultStory,
  faultStory,
  limitAtC,
  type WireHistory,
} from "./faultStory.ts";
export { operateArguments } from "./operateArguments.ts";
export { type PlotInput, plotInput, plottedJob } from "./plotInput.ts";
export { preparedProof } from "./preparedProof.ts";
export type { ProofInput, ProofOptions } from "./proofInput.ts";
export { provedResult } from "./provedResult.ts";
export { proveJob, proveOnTrial } from "./proveJob.ts";
export {
  type FirstPart,
  type FirstTold,
  mergedFirst,
  type Progress,
  type ProofWork,
  proofWork,
  proveFirst,
  proveSecond,
  type SecondPart,
  type Share,
} from "./provePart.ts";
export type * from "./proveResult.ts";
export type * from "./timeCurrent.ts";
export { type PlottedJob, timeCurrentOf, timeCurrentsOf, type WorstMet } from "./timeCurrentOf.ts";
export { withTriedChanges } from "./triedChanges.ts";
export { foreverCurrentA, permittedTime } from "./wireLimitCurve.ts";
export { type WireTemperature, wireTemperatures } from "./wireTemperatures.ts";
