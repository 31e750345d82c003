export { asFound, asPlanned, presentParts, presentWires } from "./asFound.ts";
export { type BatteryPosts, batteriesOf, batteryOf } from "./batteryOf.ts";
export { applyOperation, type OperationApplied } from "./edit/applyOperation.ts";
export { insertRelay } from "./edit/insertRelay.ts";
export { EDITED_LISTS, type EditedList, type Operation } from "./edit/operation.ts";
export { insertJoint, splitWireByConnector } from "./edit/splitWire.ts";
export { swapWireEnds } from "./edit/swapWireEnds.ts";
export { moveWireEnd, removeWithPlaces, resizeWire, setFuseRating } from "./edit/wireEdits.ts";
export type * from "./job.ts";
export { JOB_VERSION, jobSchema } from "./jobSchema.ts";
export { type Load, loadRef, loadsOf, loadsOfPart } from "./loadsOf.ts";
export { mainEarthBody } from "./mainEarthBody.ts";
export type { MergeConflict, Side } from "./merge/mergeConflict.ts";
export { type JobsMerged, mergeJobs } from "./merge/mergeJobs.ts";
export { settleOperation } from "./merge/settleOperation.ts";
export {
  connectorCavityPins,
  HUB,
  type PinOwner,
  type PinPlace,
  pinRef,
  pinsOf,
} from "./pinsOf.ts";
export { type JsonPath, jsonPointer } from "./read/jsonPointer.ts";
export { type JobRead, readJob } from "./read/readJob.ts";
export { canonicalJob } from "./write/canonicalJob.ts";
export { fingerprint } from "./write/fingerprint.ts";
export { jobJsonSchema } from "./write/jobJsonSchema.ts";
export { writeJob } from "./write/writeJob.ts";
