export { asFound, asPlanned, presentParts, presentWires } from "./asFound.ts";
export { type BatteryPosts, batteriesOf, batteryOf } from "./batteryOf.ts";
export { connectorKinds } from "./catalogue/connectorKinds.ts";
export {
  addFromCatalogue,
  foundTemplates,
  type ListedTemplate,
  type PartMade,
  partCatalogue,
} from "./catalogue/partCatalogue.ts";
export type { TemplateAnswers, TemplateAsk, TemplateGroup } from "./catalogue/partTemplate.ts";
export { applyOperation, type OperationApplied } from "./edit/applyOperation.ts";
export { addBond, addEarthPoint } from "./edit/bondEdits.ts";
export { connectorInWires, type WireAtConnector } from "./edit/connectorInWires.ts";
export { connectPins, type NewWire } from "./edit/connectPins.ts";
export {
  addPosition,
  contactGroups,
  removePosition,
  renamePosition,
  toggleContact,
} from "./edit/contactTable.ts";
export { freePin, NEW_PIN } from "./edit/freePin.ts";
export { type Hanging, type Holder, hangingOn } from "./edit/hangingOn.ts";
export { healWires } from "./edit/healWires.ts";
export { idMaker } from "./edit/idMaker.ts";
export { insertRelay } from "./edit/insertRelay.ts";
export { addLoom, putInLoom } from "./edit/loomEdits.ts";
export { EDITED_LISTS, type EditedList, type Operation } from "./edit/operation.ts";
export { scaledPhotograph, setPhotograph } from "./edit/photographEdits.ts";
export { placeJoint, placeStation, removeRun, removeStation } from "./edit/placeEdits.ts";
export { removeWhole } from "./edit/removeWhole.ts";
export { insertJoint, type PieceWays, splitWireByConnector } from "./edit/splitWire.ts";
export { swapWireEnds } from "./edit/swapWireEnds.ts";
export { type TakenAway, takeAway } from "./edit/takeAway.ts";
export { moveWireEnd, removeWithPlaces, resizeWire, setFuseRating } from "./edit/wireEdits.ts";
export { wireThrough } from "./edit/wireThrough.ts";
export type * from "./job.ts";
export { JOB_VERSION, jobSchema } from "./jobSchema.ts";
export { type Load, loadRef, loadsOf, loadsOfPart } from "./loadsOf.ts";
export { mainEarthBody } from "./mainEarthBody.ts";
export type { MergeConflict, Side } from "./merge/mergeConflict.ts";
export { type JobsMerged, mergeJobs } from "./merge/mergeJobs.ts";
export { settleOperation } from "./merge/settleOperation.ts";
export { type MetalNets, metalNets } from "./metalNets.ts";
export type { PatternAsk, PatternMade } from "./pattern/circuitPattern.ts";
export {
  circuitPatterns,
  type ListedPattern,
  listedPatterns,
  patternOperation,
} from "./pattern/circuitPatterns.ts";
export { liveWhen } from "./pattern/liveWhen.ts";
export type { Term, Terms } from "./pattern/terms.ts";
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
export { answerUnknown, type FoundOut } from "./survey/answerUnknown.ts";
export { type PartFigure, partFigures } from "./survey/partFigures.ts";
export { setFigure } from "./survey/setFigure.ts";
export { stillUnknown } from "./survey/stillUnknown.ts";
export type { Put, Unknown, UnknownAnswer, UnknownGroup } from "./survey/unknown.ts";
export { canonicalJob } from "./write/canonicalJob.ts";
export { fingerprint } from "./write/fingerprint.ts";
export { jobJsonSchema } from "./write/jobJsonSchema.ts";
export { writeJob } from "./write/writeJob.ts";
