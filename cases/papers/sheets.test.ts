import { describe, expect, it } from "vitest";
import { marksOutside, textOverlaps } from "../../engine/drawing/drawingFaults.fixture.ts";
import { type PaperSize, sheetRoom } from "../../engine/drawing/index.ts";
import { checkedDemo, DEMOS, papersOf } from "./packed.fixture.ts";

/** Text over text, and anything outside the room between head and title block, on every sheet of a pack. */
function faultsOf(demo: string, paper: PaperSize): readonly string[] {
  return papersOf(checkedDemo(demo), paper).flatMap(({ name, info, pages, sheets }) =>
    sheets.flatMap((sheet, i) => {
      const { content } = sheetRoom(sheet.paper, info, sheet.head);
      return [
        ...textOverlaps(pages[i]!.marks).map((fault) => `${name} ${i + 1}: ${fault}`),
        ...marksOutside(sheet.marks, content).map((fault) => `${name} ${i + 1}: outside: ${fault}`),
      ];
    }),
  );
}

describe("every sheet of every demo", () => {
  for (const demo of DEMOS) {
    it(`${demo} on A4: no text covers another or leaves its room`, () => {
      expect(faultsOf(demo, "a4")).toEqual([]);
    });
  }
  for (const paper of ["letter", "a3"] as const) {
    it(`minazuru-four on ${paper}: no text covers another or leaves its room`, () => {
      expect(faultsOf("minazuru-four", paper)).toEqual([]);
    });
  }
});
