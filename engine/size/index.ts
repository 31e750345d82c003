export { type BundleCount, bundleTableRatio } from "./bundleTableRatio.ts";
export { chooseFuse, type EmptyWindow, type FuseChoice, type FuseQuestion } from "./chooseFuse.ts";
export { crimpPullOf } from "./crimpPull.ts";
export type { EndFitting, FittingBasis, FittingProblem } from "./endFitting.ts";
export { endFittings } from "./endFittings.ts";
export { type Inrush, lampInrush } from "./lampInrush.ts";
export { type HeatWire, modelCurrentA } from "./modelCurrentA.ts";
export { type Rating, type RatingQuestion, ratingOf } from "./ratingOf.ts";
