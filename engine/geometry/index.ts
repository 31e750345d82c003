export { type BlockCutTree, blockCutTree, type EdgeList } from "./blockCutTree.ts";
export { bridgeEdges } from "./bridgeEdges.ts";
export type { GraphEdge } from "./graphEdge.ts";
export { type CutEdge, type MinimumCut, minimumCut } from "./minimumCut.ts";
export type { PackedCircles } from "./packCircles.ts";
export { packCircles, packingStepCount } from "./packCircles.ts";
export {
  pointAlong,
  polylineCrossings,
  polylineDistance,
  polylineLength,
  polylineSegments,
} from "./polylines.ts";
export type { Rectangle } from "./rectanglesOverlap.ts";
export { rectanglesOverlap } from "./rectanglesOverlap.ts";
export { seededRandom } from "./seededRandom.ts";
export type { Point, Segment } from "./segments.ts";
export { pointSegmentDistance, segmentCrossing, segmentDistance } from "./segments.ts";
export type { Route } from "./shortestRoutes.ts";
export { shortestRoutes } from "./shortestRoutes.ts";
export type { Limb } from "./trees.ts";
export { limbsFrom, pathInTree, unrollTree } from "./trees.ts";
