/** Layout: where things go on a drawing; millimetres, no marks. */

export { alongLine, type LinePlace, partOfLine } from "./board/alongLine.ts";
export { CLEARANCE_MM } from "./board/boardCost.ts";
export type * from "./board/boardLayout.ts";
export { layoutBoard } from "./board/layoutBoard.ts";
export {
  type BlockToPlace,
  type Obstacles,
  type PlacedBlock,
  placeBlocks,
} from "./board/placeBlocks.ts";
export type { PlacedItem } from "./diagram/columnPlaces.ts";
export type * from "./diagram/ladder.ts";
export {
  type DiagramLayout,
  type DiagramRoom,
  layoutDiagram,
  type PlacedNode,
  type PlacedSegment,
} from "./diagram/layoutDiagram.ts";
export {
  type LoomRule,
  loomRule,
  type RulePiece,
  type RulePlace,
  type RuleRow,
} from "./rule/loomRule.ts";
export {
  type MachineRule,
  machineRule,
  type RuleRun,
  type RuleStation,
} from "./rule/machineRule.ts";
export type { SideShape } from "./side/sideShape.ts";
export {
  isSpread,
  referenceSideView,
  type SideJoint,
  type SideRun,
  type SideStation,
  type SideView,
  sideView,
} from "./side/sideView.ts";
export { spreadApart } from "./side/spreadApart.ts";
