export * from "./allTables.generated.ts";
export {
  type Confidence,
  type Figure,
  type FigureColumn,
  figure,
  figureOrNull,
  leansOnMemory,
  type TableName,
} from "./figure.ts";
export { resolveWire, type WireReading, type WireRefusal } from "./resolveWire.ts";
export { copperRangeMm2, makesOfArea, makesOfStranding } from "./wireCandidates.ts";
