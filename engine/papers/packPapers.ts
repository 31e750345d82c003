import { blockDiagramPaper } from "./block/blockDiagramPaper.ts";
import { boardPapers } from "./board/boardPapers.ts";
import { BOARD_PRINT, type BoardPrint } from "./board/boardPrint.ts";
import { bundleReader } from "./board/bundles.ts";
import { circuitPaper } from "./circuit/circuitPaper.ts";
import { connectorPaper } from "./connectorPaper.ts";
import { coverSheets } from "./coverSheets.ts";
import { cutListRows, cutListSheets } from "./cutListSheets.ts";
import { diagramPapers } from "./diagram/diagramPapers.ts";
import { findingSheets } from "./findingSheets.ts";
import { fuseRows, fuseSheets } from "./fuseSheets.ts";
import { jointRows, jointSheets } from "./jointSheets.ts";
import { relayLidSheets } from "./label/relayLidLabel.ts";
import { wireLabelRows, wireLabelSheets } from "./label/wireLabels.ts";
import { locationPaper } from "./location/locationPaper.ts";
import type { PackPaper } from "./packPaper.ts";
import type { PaperInput } from "./paperInput.ts";
import { type ProofShown, proofPaper } from "./proof/proofPaper.ts";
import { sectionRows, sectionSheets } from "./section/sectionSheets.ts";
import { shoppingCsvRows, shoppingSheets } from "./shoppingSheets.ts";
import { supplyPaper } from "./supply/supplyPaper.ts";
import { terminalRows, terminalSheets } from "./terminalSheets.ts";
import { testPaper } from "./test/testPaper.ts";
import { wireListRows, wireListSheets } from "./wireListSheets.ts";

/** Every paper of the pack in reading order. A paper with nothing on it (no joints, no connectors) is left out. */
export function packPapers(
  input: PaperInput,
  print: BoardPrint = { ...BOARD_PRINT, paper: input.paper },
  proof: ProofShown | null = null,
): readonly PackPaper[] {
  return boundPapers(input, designPapers(input, print), proof);
}

/** What stands in the pack whatever the proof says: it can be drawn while the proof is made. */
export function designPapers(input: PaperInput, print: BoardPrint): readonly PackPaper[] {
  const bundleOf = bundleReader(input);
  return [
    blockDiagramPaper(input, "01-block-diagram"),
    listed("02-fuse-schedule", "Fuse schedule", fuseSheets(input), fuseRows(input)),
    circuitPaper(input, "03-circuit-sheets"),
    listed("04-wire-list", "Wire list", wireListSheets(input), wireListRows(input)),
    listed("05-cut-list", "Cut list", cutListSheets(input), cutListRows(input)),
    listed("06-terminal-schedule", "Terminals", terminalSheets(input), terminalRows(input)),
    listed("07-joint-list", "Joint list", jointSheets(input), jointRows(input)),
    connectorPaper(input, "08-connector-views"),
    listed("09-shopping-list", "Shopping list", shoppingSheets(input), shoppingCsvRows(input)),
    testPaper(input, "10-test-sheet"),
    listed("11-findings", "Findings and their working", findingSheets(input), null),
    supplyPaper(input, "12-supply"),
    locationPaper(input, "13-location-view"),
    ...boardPapers(input, { board: "14-board", loose: "14-loose-wires" }, bundleOf, print),
    listed(
      "15-bundle-sections",
      "Bundle sections",
      sectionSheets(input, bundleOf),
      sectionRows(input, bundleOf),
    ),
    listed("16-labels", "Wire labels", wireLabelSheets(input), wireLabelRows(input)),
    listed("17-relay-labels", "Relay labels", relayLidSheets(input), null),
    ...diagramPapers(input, "18-whole-diagram", print),
  ].filter(({ sheets }) => sheets.length > 0);
}

/** The design's papers between a cover that lists them and the proof, where there is one. */
export function boundPapers(
  input: PaperInput,
  design: readonly PackPaper[],
  proof: ProofShown | null,
): readonly PackPaper[] {
  const shown = proofPaper(input, "19-proof", proof);
  const papers = shown.sheets.length > 0 ? [...design, shown] : design;
  const contents = papers.map(({ name, title, sheets }) => ({
    file: `${name}.pdf`,
    title,
    sheetCount: sheets.length,
  }));
  return [listed("00-cover", "Cover", coverSheets(input, contents), null), ...papers];
}

const listed = (
  name: string,
  title: string,
  sheets: PackPaper["sheets"],
  rows: PackPaper["rows"],
): PackPaper => ({ name, title, sheets, rows, drawings: null });
