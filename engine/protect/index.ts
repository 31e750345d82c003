export { type FeedEdge, type FeedGraph, type FeedLoad, feedGraph } from "./feedGraph.ts";
export { type FeedSource, feedSources } from "./feedSources.ts";
export { type FuseReading, fuseReading } from "./fuseReading.ts";
export { guardsAtLengths } from "./guardsAtLengths.ts";
export { type Guard, type Protection, wireGuards } from "./wireGuards.ts";
