/**
 * Front door of the drawings, for a screen: plain scenes in millimetres, no PDF library, no disk; it runs in a worker of a browser.
 *
 * Everything takes a `CheckedJob`, or a `SceneSource` made once by `sceneSource(checked, before?)`: then bundles are packed and states solved only once for all
 * scenes of that job. All answers are plain data and may be posted to another thread (a `SceneSource` may not: it has functions).
 *
 * | function | answer | for editing |
 * |---|---|---|
 * | `sideViewScene(asked, { widthMm, heightMm }?)` | machine from the left; null: no station has a place | `rings`, `leftMm`, `topMm`, `scaleRatio`, `view.originMm`: page ↔ `job.layout.side` |
 * | `diagramScene(asked)` | whole diagram, one scene | `columns`, `nodes`, `pins`, `wires`, `originMm`: page − origin = `job.layout.diagram` |
 * | `circuitScene(asked, circuitId)` | one circuit, one scene; null: nothing in it | `columns` step by step, `wires`, `pins` |
 * | `boardScenes(asked, loomId, { boardWidthMm, … }?)` | loom board at true size; null: nothing measured | `layout` + `shiftMm`, `tiling` (windows), `sheets` with `withSheets: true` |
 * | `sectionScenes(asked)` | every bundle in section, 2 : 1 | `bundle` (circles), `wires` |
 * | `connectorScenes(asked)` | end views, both halves, both sides | `connector`, `half`, `side` |
 * | `machineRuleOf(asked)` | the whole loom along one rule, no scene | `stations` and `runs` by id, mm, diameter |
 * | `loomRuleOf(asked)` | every loom by itself | `rows` (trunk, branches): places, pieces with diameter, joints, mm from the datum |
 * | `surveyScene(job, { widthMm, heightMm })` | the machine to be surveyed: outline, stations and runs with room for their words | `stations`, `runs`, `scaleRatio`, `originMm`, `photograph` |
 * | `neighboursOf(checked, thing)` | what lies next to a thing along the current, no scene | `way`: towards the feed, the return, or beside |
 * | `machineScene(asked, { widthMm, heightMm }?)` | machine and loom without a word; null as above | `rings` |
 * | `buildCards(asked)` | one card a new wire: cut, ends, tools, cavities | |
 * | `testSheetOf(asked)` | the test sheet with what has been read | `test`, `subject` of each record |
 * | `sceneToSvg(scene, { palette })` | one SVG text | groups carry `data-id` and `data-of` |
 * | `markSvg(mark, palette)` | one mark | for a screen that frames marks itself |
 * | `plainMarks(marks, palette)` | lines, paths, circles, text only | wires and symbols opened, for a canvas |
 *
 * Ids: a `group` mark has `id` and `of` ("wire", "part", "pin", "joint", "connector", "body", "station", "run", "peg"); a `wire` mark has `id` itself or
 * stands in its wire's group. The same id may stand on a scene several times. Pins are PART.PIN, cavities CONNECTOR.CAVITYs and …p, earth points BODY.POINT.
 *
 * Places in `job.layout.diagram` (by id of a part, wire or joint): xMm keeps an order from left to right, yMm is how far below the upper rail it stands at
 * least. In `job.layout.board` only the direction from one placed station to the next counts; lengths stay true.
 */
export {
  type AreaMm,
  type Drawn,
  type GroupMark,
  type Mark,
  type MarkSubject,
  markSvg,
  marksBox,
  type Page,
  type Palette,
  type PaletteName,
  type PointMm,
  type PrimitiveMark,
  palettes,
  plainMarks,
  type SvgOptions,
  type SymbolMark,
  sceneToSvg,
  type TextMark,
  type WireMark,
} from "./drawing/index.ts";
export type {
  BoardLayout,
  BoardLimb,
  BoardNode,
  BoardPeg,
  DiagramLayout,
  LoomRule,
  MachineRule,
  PlacedNode,
  PlacedSegment,
  RulePiece,
  RulePlace,
  RuleRow,
  RuleRun,
  RuleStation,
  SideView,
} from "./layout/index.ts";
export {
  type BoardAskedOf,
  type BoardScenes,
  type BuildCard,
  type BuildEnd,
  boardScenes,
  buildCards,
  type CavityPlace,
  type CircuitScene,
  type ConnectorScene,
  circuitScene,
  connectorScenes,
  type DiagramColumn,
  type DiagramPlace,
  type DiagramScene,
  diagramScene,
  loadReader,
  loomRuleOf,
  type MachineScene,
  machineRuleOf,
  machineScene,
  type Neighbour,
  neighboursOf,
  recordedReading,
  type Scene,
  type SceneAsked,
  type SceneSource,
  type SectionScene,
  type SideViewScene,
  type SurveyRun,
  type SurveyScene,
  type SurveyStation,
  sceneSource,
  sectionScenes,
  sideViewScene,
  surveyScene,
  type TestSheetRow,
  type TestSheetSection,
  type TestVerdict,
  testSheetOf,
  type WirePlace,
  wayPoints,
  wirePlaces,
} from "./papers/index.ts";
export { placeNames } from "./papers/supply/placeNames.ts";
export { supplyAnswer, withLedLamps } from "./supply/index.ts";
