/** Third front door, for a screen's own thread: names, printing and reading of quantities, colours. It loads no solver and no schema. */
export { colourValue, isLight, wireColourValue } from "./drawing/wireColour.ts";
export { contactGroups } from "./job/edit/contactTable.ts";
export type { EditedList, Operation } from "./job/edit/operation.ts";
export {
  BOARD_LIMITS_MM,
  BOARD_PRINT,
  type BoardPrint,
  boardPrintFaults,
  readingBehindMm,
} from "./papers/board/boardPrint.ts";
export {
  type LengthGuess,
  type LengthReading,
  printNumber,
  printQuantity,
  readLength,
  readNumber,
  readWireName,
  type WireNameReading,
} from "./units/index.ts";
export { ENGINE_VERSION } from "./version.ts";
