export { ambientsOf } from "./ambientOf.ts";
export { type BundleAnswer, type Bundled, bundleAnswer, bundleOf } from "./bundleAnswer.ts";
export type { Conductor, Conductors } from "./conductor.ts";
export { conductorsOf, UNSIZED_MAKE } from "./conductorsOf.ts";
export {
  type Allowances,
  allowance,
  allowancesOf,
  type CutLength,
  cutLength,
  cutLengthsOf,
} from "./cutLength.ts";
export { type CutTotal, cutTotals } from "./cutTotals.ts";
export { type DoubtfulLength, doubtfulLengths } from "./doubtfulLengths.ts";
export { type JointMark, jointMarks } from "./loomMarks.ts";
export { type MakeFields, makeFields } from "./makeFields.ts";
export { placesOfPins } from "./placesOfPins.ts";
export { type PlugSides, plugSides } from "./plugSides.ts";
export type { LengthUnknown, PathStep, Place, Routed, Stretch, WireRoute } from "./routed.ts";
export { routeJob } from "./routeJob.ts";
export { type SleeveChoice, sleeveChoices } from "./sleeveChoices.ts";
export { viaAround } from "./viaAround.ts";
export { viaOver } from "./viaOver.ts";
