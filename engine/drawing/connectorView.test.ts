import { expect, it } from "vitest";
import { connectorView } from "./connectorView.ts";
import { marksOutside, struckTexts, textOverlaps } from "./drawingFaults.fixture.ts";
import { textMarks } from "./missingGlyphs.ts";
import { sampleConnector } from "./sampleDrawings.fixture.ts";
import { area } from "./scene.ts";

const labelsByPlace = (view: "wire side" | "mating side"): string[][] => {
  const labels = textMarks(connectorView({ ...sampleConnector, view }).marks).filter(({ text }) =>
    /^[1-6]$/.test(text),
  );
  const rows = [...new Set(labels.map(({ at }) => at.yMm))].sort((a, b) => a - b);
  return rows.map((yMm) =>
    labels
      .filter(({ at }) => at.yMm === yMm)
      .sort((a, b) => a.at.xMm - b.at.xMm)
      .map(({ text }) => text),
  );
};

it("shows the mating side as the wire side, left and right exchanged", () => {
  expect(labelsByPlace("wire side")).toEqual([
    ["1", "2", "3"],
    ["4", "5", "6"],
  ]);
  expect(labelsByPlace("mating side")).toEqual([
    ["3", "2", "1"],
    ["6", "5", "4"],
  ]);
});

it("names the view, every wire by number and code, and blanks", () => {
  const texts = textMarks(connectorView(sampleConnector).marks).map(({ text }) => text);
  expect(texts).toContain("seen from wire side, 6 way, 1 blank");
  for (const number of ["12", "31", "32", "36", "60", "33"]) expect(texts).toContain(number);
  expect(texts.filter((text) => text === "blank")).toHaveLength(1);
});

it("keeps long numbers, long labels and many wires apart", () => {
  const wires = ["1234-567A", "B1", "C22"].map((number) => ({
    id: number,
    number,
    colours: { main: "red", tracer: "white" },
    areaMm2: 16,
    code: "Lg/Bl",
  }));
  for (const keyAt of ["top", "bottom", null] as const) {
    const drawn = connectorView({
      ...sampleConnector,
      keyAt,
      rows: [
        [
          { label: "30a/87", wires },
          { label: "2", wires: [] },
        ],
        [{ label: "86", wires: wires.slice(0, 1) }],
      ],
    });
    expect(textOverlaps(drawn.marks)).toEqual([]);
    expect(struckTexts(drawn.marks)).toEqual([]);
    expect(marksOutside(drawn.marks, area(0, 0, drawn.widthMm, drawn.heightMm))).toEqual([]);
  }
});
