export type { Block, FlowedPage } from "./block.ts";
export { below, flowBlocks } from "./block.ts";
export { blockDiagram } from "./blockDiagram/blockDiagram.ts";
export type { BlockDiagramInput, BlockKind } from "./blockDiagram/blockDiagramInput.ts";
export {
  type CircuitLayout,
  type CircuitSheetDrawing,
  circuitSheet,
  layCircuit,
} from "./circuitSheet/circuitSheet.ts";
export type {
  CircuitColumn,
  CircuitSheetInput,
  CircuitStep,
  ColumnEnd,
  ColumnStart,
  ConnectorStep,
  JointStep,
  PartHalf,
  PartStep,
  WireStep,
} from "./circuitSheet/circuitSheetInput.ts";
export { type StepSizes, stepSizes } from "./circuitSheet/stepSizes.ts";
export type { ColourToken, PaletteToken } from "./colourToken.ts";
export { type ConnectorViewInput, type ConnectorWire, connectorView } from "./connectorView.ts";
export { type ContactTableInput, contactTable } from "./contactTable.ts";
export { contrastRatio, relativeLuminance } from "./contrastRatio.ts";
export { type CsvValue, csvText } from "./csv.ts";
export type { Drawn } from "./drawn.ts";
export { plainMarks } from "./expandMark.ts";
export { fitText } from "./fitText.ts";
export { framedDocument, type Sheet } from "./framedDocument.ts";
export { layoutTable } from "./layoutTable.ts";
export { CAP_MM, GRID_MM, LINE_MM, linePitchMm, wireBodyMm } from "./lineWidth.ts";
export { marksBox } from "./marksBox.ts";
export { isAnyWithin, marksWithin } from "./marksWithin.ts";
export { measureSquare, scaleBar } from "./measureMarks.ts";
export { measureTextMm, textAreaMm } from "./measureTextMm.ts";
export { type MissingGlyph, missingGlyphs } from "./missingGlyphs.ts";
export { pageToDxf } from "./pageToDxf.ts";
export { type Palette, type PaletteName, palettes } from "./palette.ts";
export {
  type FontFaceKey,
  type FontWeight,
  PAPER_FONT_FILES,
  type PaperFonts,
} from "./paperFonts.ts";
export { type Orientation, type Paper, type PaperSize, paperSizeMm } from "./paperSize.ts";
export { arcSteps } from "./pathText.ts";
export { scaleMarks } from "./scaleMarks.ts";
export type * from "./scene.ts";
export { area, point } from "./scene.ts";
export { markSvg, type SvgOptions, sceneToSvg } from "./sceneToSvg.ts";
export { severityTag, severityTagWidthMm } from "./severityTag.ts";
export { type SheetHead, type SheetRoom, sheetFrame, sheetRoom } from "./sheetFrame.ts";
export { dateText, poleSigns, type SheetInfo } from "./sheetInfo.ts";
export { stretchMarks } from "./stretchMarks.ts";
export { symbolMarks, symbolPins } from "./symbolMarks.ts";
export { SYMBOL_NAMES, type SymbolName } from "./symbolName.ts";
export type { ColumnWidth, Table, TableCell, TableColumn, TableGroup, TableRow } from "./table.ts";
export { tableBlocks } from "./tableBlocks.ts";
export {
  bulletBlocks,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
  TEXT_STYLE,
  type TextStyle,
  textMark,
} from "./textBlock.ts";
export { moveMarks } from "./transformMark.ts";
export { type Verdict, verdictStamp } from "./verdictStamp.ts";
export { colourValue, isLight, wireColourValue } from "./wireColour.ts";
export { wrapText } from "./wrapText.ts";
