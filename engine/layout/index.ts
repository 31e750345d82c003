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
