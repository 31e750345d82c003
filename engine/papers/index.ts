/** Papers: what stands on each sheet of a build pack. */

export { BOARD_PRINT, type BoardPrint, READING_MM } from "./board/boardTiles.ts";
export type { PackPaper } from "./packPaper.ts";
export { packPapers } from "./packPapers.ts";
export { type PaperInput, paperInput } from "./paperInput.ts";
