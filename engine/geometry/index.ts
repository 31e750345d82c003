export { type BlockCutTree, blockCutTree, type EdgeList } from "./blockCutTree.ts";
export { type CutEdge, type MinimumCut, minimumCut } from "./minimumCut.ts";
