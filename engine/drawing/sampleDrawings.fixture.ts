import { blockDiagram } from "./blockDiagram/blockDiagram.ts";
import type { BlockDiagramInput } from "./blockDiagram/blockDiagramInput.ts";
import { type ConnectorViewInput, connectorView } from "./connectorView.ts";
import { type ContactTableInput, contactTable } from "./contactTable.ts";
import type { Sheet } from "./framedDocument.ts";
import type { Paper } from "./paperSize.ts";
import { sampleInfo } from "./sampleSheets.fixture.ts";
import { sheetRoom } from "./sheetFrame.ts";
import { moveMarks } from "./transformMark.ts";

const landscape: Paper = { size: "a4", orientation: "landscape" };

const wire = (id: string, main: string, tracer?: string) => ({
  id,
  number: id,
  colours: { main, tracer },
  areaMm2: 1,
  code: tracer ? `${main[0]!.toUpperCase()}/${tracer[0]!.toUpperCase()}` : main[0]!.toUpperCase(),
});

export const sampleConnector: ConnectorViewInput = {
  id: "X2",
  name: "X2",
  place: "in the headlamp shell, plug",
  view: "wire side",
  keyAt: "top",
  rows: [
    [
      { label: "1", wires: [wire("12", "brown", "blue")] },
      { label: "2", wires: [wire("31", "blue", "white")] },
      { label: "3", wires: [] },
    ],
    [
      { label: "4", wires: [wire("32", "blue", "red"), wire("36", "blue", "white")] },
      { label: "5", wires: [wire("60", "purple")] },
      { label: "6", wires: [wire("33", "red")] },
    ],
  ],
};

export const sampleContactTable: ContactTableInput = {
  id: "KEY",
  pins: ["BAT", "IGN", "LTS", "PRK"],
  positions: [
    { name: "off", isRest: true, joins: [] },
    {
      name: "ride",
      joins: [
        ["BAT", "IGN"],
        ["IGN", "LTS"],
      ],
    },
    { name: "park", joins: [["BAT", "PRK"]] },
    {
      name: "test",
      joins: [
        ["BAT", "LTS"],
        ["IGN", "PRK"],
      ],
    },
  ],
};

type Blocks = BlockDiagramInput["blocks"][number];

const block = (kind: Blocks["kind"], id: string, name: string, note = ""): Blocks => ({
  kind,
  id,
  name,
  note,
});
const links = (alwaysLive: boolean, from: string, ...to: readonly string[]) =>
  to.map((each) => ({ from, to: each, alwaysLive }));

export const sampleBlocks: BlockDiagramInput = {
  blocks: [
    block("source", "ALT", "Alternator", "180 W at 5 000 rpm"),
    block("source", "REG", "Rectifier and regulator", "14.2 V"),
    block("battery", "BAT", "Battery", "12 V, 9 Ah"),
    block("fuse", "F0", "F0 main", "20 A"),
    block("fuse", "F1", "F1 lighting", "15 A"),
    block("fuse", "F2", "F2 signals", "10 A"),
    block("switch", "KEY", "Key switch", "off, ride, park"),
    block("switch", "LTS", "Lighting switch"),
    block("switch", "DIP", "Dip switch"),
    block("switch", "FLA", "Flasher and indicator switch"),
    block("switch", "HB", "Horn button"),
    block("switch", "BRK", "Brake switches", "front and rear"),
    block("load", "COIL", "Ignition coils", "2 × 36 W"),
    block("load", "HEAD", "Headlamp", "45/40 W, 3.7 A"),
    block("load", "MAIN", "Main tell-tale", "2 W"),
    block("load", "TAIL", "Tail lamp", "5 W"),
    block("load", "CLK", "Instrument lamps", "2 × 3 W"),
    block("load", "BL", "Brake lamp", "21 W"),
    block("load", "IND", "Indicators", "4 × 21 W"),
    block("load", "HORN", "Horn", "3.5 A"),
  ],
  links: [
    ...links(true, "ALT", "REG"),
    ...links(true, "REG", "BAT"),
    ...links(true, "BAT", "F0", "REG"),
    ...links(true, "F0", "KEY", "HB"),
    ...links(false, "KEY", "F1", "F2", "COIL"),
    ...links(false, "F1", "LTS"),
    ...links(false, "LTS", "DIP", "TAIL", "CLK"),
    ...links(false, "DIP", "HEAD", "MAIN"),
    ...links(false, "F2", "FLA", "BRK"),
    ...links(false, "FLA", "IND"),
    ...links(false, "BRK", "BL"),
    ...links(false, "HB", "HORN"),
  ],
};

export function endViewSheet(): Sheet {
  const head = {
    title: "Connectors and switches",
    lead: "Wire side and mating side named at each.",
  };
  const { content } = sheetRoom(landscape, sampleInfo, head);
  const mating = connectorView({ ...sampleConnector, view: "mating side" });
  const wireSide = connectorView(sampleConnector);
  const table = contactTable(sampleContactTable);
  return {
    paper: landscape,
    documentName: "end views",
    head,
    bookmark: ["End views"],
    marks: [
      ...moveMarks(wireSide.marks, content.xMm, content.yMm),
      ...moveMarks(mating.marks, content.xMm + 100, content.yMm),
      ...moveMarks(table.marks, content.xMm + 190, content.yMm + 4),
    ],
  };
}

export function blockSheet(): Sheet {
  const head = { title: "Block diagram", lead: "Bold: live at all times." };
  const { content } = sheetRoom(landscape, sampleInfo, head);
  const drawn = blockDiagram(sampleBlocks, content.widthMm);
  return {
    paper: landscape,
    documentName: "block diagram",
    head,
    bookmark: ["Block diagram"],
    marks: moveMarks(drawn.marks, content.xMm, content.yMm),
  };
}
