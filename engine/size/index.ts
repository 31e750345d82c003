export { type BundleCount, bundleTableRatio } from "./bundleTableRatio.ts";
export { type ChangeToTry, changesToTry } from "./changesToTry.ts";
export { cheapestSizes } from "./cheapestSizes.ts";
export {
  chooseFuse,
  type EmptyWindow,
  type FuseChoice,
  type FuseQuestion,
  isMeltingKnown,
} from "./chooseFuse.ts";
export { crimpPullOf } from "./crimpPull.ts";
export {
  type DesignCurrent,
  type DesignCurrents,
  type DesignWay,
  designCurrents,
} from "./designCurrents.ts";
export { designV } from "./designNetwork.ts";
export { type DropLimit, dropClassOf, dropLimitOf } from "./dropLimit.ts";
export type { EndFitting, FittingBasis, FittingProblem } from "./endFitting.ts";
export { endFittings } from "./endFittings.ts";
export { fuseHolds } from "./fuseHolds.ts";
export { type Inrush, lampInrush } from "./lampInrush.ts";
export { wireDropV } from "./loadSizing.ts";
export type { Shortfall } from "./makeFits.ts";
export { makesNamed, type NamedMakes } from "./makesNamed.ts";
export { type HeatWire, modelCurrentA } from "./modelCurrentA.ts";
export { type RateKept, rateKept } from "./rateKept.ts";
export { type Rating, type RatingQuestion, ratingOf } from "./ratingOf.ts";
export type { LoadSizing, SizedJob, Sizing } from "./sizedJob.ts";
export { type Guards, type SizingKnown, sizeJob } from "./sizeJob.ts";
export type { DropBudget, SizeOption, SizeProblem, SizeSolution } from "./sizeProblem.ts";
export { type WireAnswer, type WireAnswered, type WireQuestion, wireAnswer } from "./wireAnswer.ts";
export { type WireDrop, wireDropOf } from "./wireDropOf.ts";
export { type WirePlace, wirePlacesOf } from "./wirePlaces.ts";
