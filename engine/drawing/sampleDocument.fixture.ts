import { framedDocument } from "./framedDocument.ts";
import { circuitSheets } from "./sampleCircuit.fixture.ts";
import { blockSheet, endViewSheet } from "./sampleDrawings.fixture.ts";
import { proseSheet, sampleInfo, symbolSheet, tableSheets } from "./sampleSheets.fixture.ts";
import type { DrawingDocument } from "./scene.ts";

/** One of everything, to be looked at and tested. */
export const sampleDocument = (): DrawingDocument =>
  framedDocument(sampleInfo, "Sample papers", [
    ...tableSheets(),
    proseSheet(),
    symbolSheet(),
    endViewSheet(),
    blockSheet(),
    ...circuitSheets({ size: "a4", orientation: "portrait" }),
    ...circuitSheets({ size: "a4", orientation: "landscape" }),
  ]);
