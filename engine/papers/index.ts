/** Papers: what stands on each sheet of a build pack. */

export {
  BOARD_LIMITS_MM,
  BOARD_PRINT,
  type BoardPrint,
  type BoardPrintFault,
  boardPrintFaults,
  READING_MM,
  readingBehindMm,
} from "./board/boardPrint.ts";
export {
  type BuildCard,
  type BuildEnd,
  buildCards,
  type CavityPlace,
} from "./build/buildCards.ts";
export { loadReader } from "./loadText.ts";
export type { PackPaper } from "./packPaper.ts";
export { boundPapers, designPapers, packPapers } from "./packPapers.ts";
export { type PaperInput, paperInput } from "./paperInput.ts";
export { type ProofShown, proofPaper } from "./proof/proofPaper.ts";
export { timeCurrentPlot } from "./proof/timeCurrentPlot.ts";
export { type BoardAskedOf, type BoardScenes, boardScenes } from "./scenes/boardScenes.ts";
export { type CircuitScene, circuitScene } from "./scenes/circuitScene.ts";
export { type ConnectorScene, connectorScenes } from "./scenes/connectorScenes.ts";
export {
  type DiagramColumn,
  type DiagramPlace,
  type DiagramScene,
  diagramScene,
} from "./scenes/diagramScene.ts";
export type { Scene } from "./scenes/framedScene.ts";
export { loomRuleOf, machineRuleOf } from "./scenes/loomRuleOf.ts";
export { type MachineScene, machineScene } from "./scenes/machineScene.ts";
export { type Neighbour, neighboursOf } from "./scenes/neighboursOf.ts";
export { type SceneAsked, type SceneSource, sceneSource } from "./scenes/sceneSource.ts";
export { type SectionScene, sectionScenes } from "./scenes/sectionScenes.ts";
export { type SideViewScene, sideViewScene } from "./scenes/sideViewScene.ts";
export {
  type SurveyRun,
  type SurveyScene,
  type SurveyStation,
  surveyScene,
} from "./scenes/surveyScene.ts";
export { wayPoints } from "./scenes/wayPoints.ts";
export { type WirePlace, wirePlaces } from "./scenes/wirePlaces.ts";
export {
  recordedReading,
  type TestSheetRow,
  type TestSheetSection,
  type TestVerdict,
  testSheetOf,
} from "./test/testSheet.ts";
