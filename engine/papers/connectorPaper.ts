import {
  type AreaMm,
  type Block,
  type ConnectorViewInput,
  type ConnectorWire,
  connectorView,
  type Drawn,
  flowBlocks,
  type Mark,
  moveMarks,
  type Paper,
  type Sheet,
  sheetRoom,
} from "../drawing/index.ts";
import type { Connector } from "../job/index.ts";
import { colourCode, lettersName } from "./colourText.ts";
import type { PackPaper } from "./packPaper.ts";
import type { PaperInput } from "./paperInput.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

const GAP_MM = 8;

/** Plug and socket of every connector as they are held in the hand: both halves from the wire side, and the mating side to check by. */
export function connectorPaper(input: PaperInput, name: string): PackPaper {
  const connectors = input.job.connectors
    .filter(({ status }) => status !== "remove")
    .sort((left, right) => compareNumbers(left.id, right.id));
  const head = {
    title: "Connector end views",
    lead: `Wire side: the face the wires go in. Mating side: the face that meets the other half, left and right exchanged. The job states no latch: cavity 1 is where the moulding says 1. Colours in ${lettersName(input.job.colours.letters)}.`,
  };
  const paper: Paper = { size: input.paper, orientation: "landscape" };
  const { content } = sheetRoom(paper, input.info, head);
  const rows = connectors.flatMap((connector) => connectorBlocks(input, connector, content));
  const sheets =
    connectors.length === 0
      ? []
      : flowBlocks(rows, content).map(
          ({ marks }, i): Sheet => ({
            paper,
            documentName: "connector views",
            head,
            bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
            marks,
          }),
        );
  return {
    name,
    title: "Connector end views",
    sheets,
    rows: null,
    drawings: sheets.map((_, i) => (sheets.length > 1 ? `${name}-${i + 1}` : name)),
  };
}

/** The four views of one connector, as many beside each other as the paper holds. */
function connectorBlocks(input: PaperInput, connector: Connector, room: AreaMm): readonly Block[] {
  const views = (["socket", "plug"] as const).flatMap((half) =>
    (["wire side", "mating side"] as const).map((view) =>
      connectorView(viewInput(input, connector, half, view)),
    ),
  );
  const rows: Drawn[][] = [[]];
  let usedMm = 0;
  for (const view of views) {
    if (usedMm > 0 && usedMm + view.widthMm > room.widthMm) {
      rows.push([]);
      usedMm = 0;
    }
    rows.at(-1)!.push(view);
    usedMm += view.widthMm + GAP_MM;
  }
  return rows.map((row, i) => ({
    heightMm: Math.max(...row.map(({ heightMm }) => heightMm)),
    marks: beside(row),
    gapAfterMm: i === rows.length - 1 ? 7 : 4,
    keepWithNext: i < rows.length - 1,
  }));
}

function beside(row: readonly Drawn[]): readonly Mark[] {
  let xMm = 0;
  return row.flatMap((view) => {
    const marks = moveMarks(view.marks, xMm, 0);
    xMm += view.widthMm + GAP_MM;
    return marks;
  });
}

function viewInput(
  input: PaperInput,
  connector: Connector,
  half: "plug" | "socket",
  view: ConnectorViewInput["view"],
): ConnectorViewInput {
  const { job, design } = input;
  const { letters } = job.colours;
  const station = job.stations.find(({ id }) => id === connector.station)?.name ?? "";
  const wiresAt = (cavity: string): readonly ConnectorWire[] =>
    (design.wiresAt.get(`${connector.id}.${cavity}${half === "plug" ? "p" : "s"}`) ?? []).map(
      (wire) => ({
        id: wire.id,
        number: numberOf(wire),
        colours: wire.colour ?? null,
        areaMm2: design.conductors.get(wire.id)?.areaMm2 ?? null,
        code: colourCode(wire.colour, letters),
      }),
    );
  const rowCount = connector.rowCount ?? 1;
  const perRow = Math.ceil(connector.cavities.length / rowCount);
  const rows = Array.from({ length: rowCount }, (_, i) =>
    connector.cavities.slice(i * perRow, (i + 1) * perRow),
  ).filter((row) => row.length > 0);
  return {
    id: connector.id,
    name: connector.id,
    place: [half, connector.name, station].filter(Boolean).join(", "),
    view,
    rows: rows.map((row) => row.map((label) => ({ label, wires: wiresAt(label) }))),
    keyAt: null,
  };
}
