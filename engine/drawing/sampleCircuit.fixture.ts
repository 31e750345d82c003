import { circuitSheet } from "./circuitSheet/circuitSheet.ts";
import type { CircuitSheetInput, WireStep } from "./circuitSheet/circuitSheetInput.ts";
import type { Sheet } from "./framedDocument.ts";
import type { Paper } from "./paperSize.ts";
import { sampleInfo } from "./sampleSheets.fixture.ts";
import { sheetRoom } from "./sheetFrame.ts";

const wire = (
  number: string,
  main: string,
  tracer: string | undefined,
  code: string,
  expected?: string,
): WireStep => ({
  kind: "wire",
  id: `W${number}`,
  number,
  colours: { main, tracer },
  areaMm2: 1,
  code,
  word: tracer ? `${main}, ${tracer}` : main,
  size: "1.00 mm²",
  expected,
});

/** The headlamp of the invented twin: one feed, a dip switch, both filaments and the tell-tale. */
export const sampleCircuit: CircuitSheetInput = {
  feedLabel: "live −, behind F0 20 A, 12.4 V",
  earthLabel: "earth +, 0 V",
  columns: [
    {
      id: "main",
      start: { kind: "feed" },
      steps: [
        { kind: "part", id: "F1", symbol: "fuse", name: "F1", note: "15 A blade, left side panel" },
        wire("12", "brown", "blue", "N/U", "12.3 V"),
        {
          kind: "connector",
          connector: "X1",
          id: "X2.4",
          name: "X2.4",
          place: "in headlamp shell",
          liveSide: "above",
        },
        {
          kind: "part",
          id: "LTS",
          symbol: "switchMake",
          name: "LTS",
          note: "lighting switch, also in C5",
          pinAbove: "12",
          pinBelow: "30",
          contacts: {
            id: "LTS",
            pins: ["12", "30", "60"],
            positions: [
              { name: "off", isRest: true, joins: [] },
              { name: "pilot", joins: [["12", "60"]] },
              {
                name: "head",
                joins: [
                  ["12", "30"],
                  ["30", "60"],
                ],
              },
            ],
          },
        },
        wire("30", "blue", undefined, "U"),
        { kind: "joint", id: "DIP.in", name: "DIP 30" },
        {
          kind: "part",
          id: "DIP",
          symbol: "changeOver",
          isTurned: true,
          symbolPins: ["common", "left"],
          name: "DIP",
          note: "main",
          pinAbove: "30",
          contacts: {
            id: "DIP",
            pins: ["30", "31", "32"],
            positions: [
              { name: "main", isRest: true, joins: [["30", "31"]] },
              { name: "dip", joins: [["30", "32"]] },
            ],
          },
        },
        wire("31", "blue", "white", "U/W", "12.1 V"),
        { kind: "joint", id: "J3", name: "J3" },
        {
          kind: "part",
          id: "HEAD",
          symbol: "twinLamp",
          symbolPins: ["left", "common"],
          name: "HEAD",
          note: "main filament 45 W",
        },
        { kind: "joint", id: "J4", name: "J4" },
        wire("33", "red", undefined, "R"),
      ],
      end: { kind: "earth" },
    },
    {
      id: "tell-tale",
      start: { kind: "branch", column: "main", joint: "J3" },
      steps: [
        wire("36", "blue", "white", "U/W", "12.0 V"),
        { kind: "part", id: "MAIN", symbol: "lamp", name: "MAIN", note: "2 W, clocks" },
        wire("37", "red", undefined, "R"),
      ],
      end: { kind: "earth" },
    },
    {
      id: "dip",
      start: { kind: "branch", column: "main", joint: "DIP.in" },
      steps: [
        {
          kind: "part",
          id: "DIP",
          symbol: "switchMake",
          name: "DIP",
          note: "dip, see column 1",
          pinBelow: "32",
        },
        wire("32", "blue", "red", "U/R"),
        {
          kind: "part",
          id: "HEAD",
          symbol: "twinLamp",
          symbolPins: ["right", "common"],
          name: "HEAD",
          note: "dip filament 40 W",
        },
      ],
      end: { kind: "join", column: "main", joint: "J4" },
    },
    {
      id: "pilot",
      start: { kind: "reference", label: "from LTS 60, column 1" },
      steps: [
        wire("60", "purple", undefined, "P"),
        { kind: "part", id: "PIL", symbol: "lamp", name: "PILOT", note: "5 W" },
      ],
      end: { kind: "frame", label: "frame at headlamp bracket" },
    },
  ],
};

export function circuitSheets(paper: Paper): Sheet[] {
  const head = {
    title: "Headlamp",
    lead: "Switches drawn at rest. Ring: test point. Dot: joint. Volts: red lead on battery +.",
  };
  const { content } = sheetRoom(paper, sampleInfo, head);
  return circuitSheet(sampleCircuit, content).pages.map((marks, i) => ({
    paper,
    documentName: "circuit sheet",
    head,
    bookmark: ["Circuit sheets", `Headlamp ${paper.size} ${paper.orientation} ${i + 1}`],
    marks,
  }));
}
