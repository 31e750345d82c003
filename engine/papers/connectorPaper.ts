import {
  type AreaMm,
  type Block,
  CAP_MM,
  type ConnectorViewInput,
  type ConnectorWire,
  connectorView,
  type Drawn,
  flowBlocks,
  measureTextMm,
  moveMarks,
  type Sheet,
  sheetRoom,
  type TableColumn,
  TEXT_STYLE,
  tableBlocks,
  textMark,
  wrapText,
} from "../drawing/index.ts";
import type { Connector } from "../job/index.ts";
import { colourCode, colourWords, lettersName } from "./colourText.ts";
import { fewestSheets } from "./fewestSheets.ts";
import type { PackPaper } from "./packPaper.ts";
import type { PaperInput } from "./paperInput.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

const GAP_MM = 7;
const ROW_GAP_MM = 4;
const TITLE_MM = 7;
const BELOW_MM = 8;

/** Plug and socket of every connector as they are held in the hand: both halves from the wire side, and the mating side to check by. */
export function connectorPaper(input: PaperInput, name: string): PackPaper {
  const connectors = input.job.connectors
    .filter(({ status }) => status !== "remove")
    .sort((left, right) => compareNumbers(left.id, right.id));
  const head = {
    title: "Connector end views",
    lead: `Wire side: where the wires go in. Mating side: what meets the other half, left and right exchanged. No latch is stated: cavity 1 is where the moulding says 1. Colours in ${lettersName(input.job.colours.letters)}.`,
  };
  const sheets = fewestSheets(input, (paper) => {
    const { content } = sheetRoom(paper, input.info, head);
    const blocks = connectorBlocks(input, connectors, content);
    const pages = blocks.length === 0 ? [] : flowBlocks(blocks, content);
    return pages.map(
      ({ marks }, i): Sheet => ({
        paper,
        documentName: "connector views",
        head,
        bookmark: i === 0 ? [head.title] : [head.title, `continued ${i + 1}`],
        marks,
      }),
    );
  });
  return {
    name,
    title: "Connector end views",
    sheets,
    rows: null,
    drawings: sheets.map((_, i) => (sheets.length > 1 ? `${name}-${i + 1}` : name)),
  };
}

function connectorBlocks(
  input: PaperInput,
  connectors: readonly Connector[],
  content: AreaMm,
): readonly Block[] {
  const laid = connectors.map((connector) => ({
    connector,
    ...laidConnector(input, connector, content.widthMm),
  }));
  const isDrawn = ({ rows }: LaidConnector): boolean =>
    rows.every((row) => row.widthMm <= content.widthMm && row.heightMm <= content.heightMm - 20);
  return [
    ...shelves(laid.filter(isDrawn), content.widthMm),
    ...laid
      .filter((one) => !isDrawn(one))
      .flatMap(({ connector }) => cavityBlocks(input, connector, content)),
  ];
}

/** One connector: its title, and its views in rows. */
interface LaidConnector {
  readonly title: Drawn;
  readonly rows: readonly Drawn[];
}

/** The four views of one connector under its name, as many beside each other as the paper holds. */
function laidConnector(input: PaperInput, connector: Connector, widthMm: number): LaidConnector {
  const views = (["socket", "plug"] as const).flatMap((half) =>
    (["wire side", "mating side"] as const).map((view) =>
      connectorView(connectorViewInput(input, connector, half, view)),
    ),
  );
  // All four in a row, else a row for each half, else one under the other.
  const rows = [4, 2, 1]
    .map((count) => rowsOf(views, count))
    .find((some) => some.every((row) => row.widthMm <= widthMm));
  return { title: titleOf(input, connector, widthMm), rows: rows ?? rowsOf(views, 1) };
}

const rowsOf = (views: readonly Drawn[], count: number): readonly Drawn[] =>
  views.flatMap((_, i) => (i % count === 0 ? [beside(views.slice(i, i + count))] : []));

function titleOf(input: PaperInput, connector: Connector, widthMm: number): Drawn {
  const station = input.job.stations.find(({ id }) => id === connector.station)?.name;
  const title = [`${connector.id}  ${connector.name}`, station, connector.kind]
    .filter(Boolean)
    .join(", ");
  const lines = wrapText(title, widthMm, CAP_MM.part, 700);
  return {
    marks: lines.map((line, i) =>
      textMark(line, 0, CAP_MM.part + 0.5 + i * TITLE_MM, TEXT_STYLE.part),
    ),
    widthMm: Math.max(...lines.map((line) => measureTextMm(line, CAP_MM.part, 700))),
    heightMm: lines.length * TITLE_MM,
  };
}

function beside(views: readonly Drawn[]): Drawn {
  let xMm = 0;
  const marks = views.flatMap((view) => {
    const moved = moveMarks(view.marks, xMm, 0);
    xMm += view.widthMm + GAP_MM;
    return moved;
  });
  return { marks, widthMm: xMm - GAP_MM, heightMm: Math.max(...views.map((one) => one.heightMm)) };
}

/** Small connectors beside each other, in one row or two; the rows of a large one under each other, so that a page may end between them. */
function shelves(all: readonly LaidConnector[], widthMm: number): readonly Block[] {
  const blocks: Block[] = [];
  let shelf: Drawn[] = [];
  const put = (): void => {
    if (shelf.length > 0) blocks.push({ ...beside(shelf), gapAfterMm: BELOW_MM });
    shelf = [];
  };
  for (const { title, rows } of all) {
    const box = under([title, ...rows]);
    if (rows.length === 1 || (rows.length === 2 && box.widthMm <= (widthMm - GAP_MM) / 2)) {
      if (shelf.length > 0 && beside([...shelf, box]).widthMm > widthMm) put();
      shelf.push(box);
      continue;
    }
    put();
    blocks.push({ ...title, keepWithNext: true });
    rows.forEach((row, i) => {
      blocks.push({ ...row, gapAfterMm: i === rows.length - 1 ? BELOW_MM : ROW_GAP_MM });
    });
  }
  put();
  return blocks;
}

function under(parts: readonly Drawn[]): Drawn {
  let yMm = 0;
  const marks = parts.flatMap((part) => {
    const moved = moveMarks(part.marks, 0, yMm);
    yMm += part.heightMm;
    return moved;
  });
  return { marks, widthMm: Math.max(...parts.map((one) => one.widthMm)), heightMm: yMm };
}

/** A connector too large to be drawn on this paper, cavity by cavity as a list. */
function cavityBlocks(input: PaperInput, connector: Connector, content: AreaMm): readonly Block[] {
  const wires = (cavity: string, half: "p" | "s"): string =>
    (input.design.wiresAt.get(`${connector.id}.${cavity}${half}`) ?? [])
      .map(
        (wire) =>
          `${numberOf(wire)} ${colourCode(wire.colour, input.job.colours.letters)} ${colourWords(wire.colour)}`,
      )
      .join(", ") || "blank";
  const column = (key: string, heading: string): TableColumn => ({
    key,
    heading,
    width: { kind: "share", share: 1, minMm: 30 },
  });
  return [
    { ...titleOf(input, connector, content.widthMm), keepWithNext: true },
    ...tableBlocks(
      {
        columns: [
          { key: "cavity", heading: "Cavity", width: { kind: "natural", maxMm: 40 } },
          column("socket", "Socket half"),
          column("plug", "Plug half"),
        ],
        groups: [
          {
            heading: null,
            rows: connector.cavities.map((cavity) => ({
              cells: { cavity, socket: wires(cavity, "s"), plug: wires(cavity, "p") },
            })),
          },
        ],
      },
      content.widthMm,
      content.heightMm,
    ),
  ];
}

export function connectorViewInput(
  input: PaperInput,
  connector: Connector,
  half: "plug" | "socket",
  view: ConnectorViewInput["view"],
): ConnectorViewInput {
  const { job, design } = input;
  const { letters } = job.colours;
  const pinOf = (cavity: string): string =>
    `${connector.id}.${cavity}${half === "plug" ? "p" : "s"}`;
  const wiresAt = (cavity: string): readonly ConnectorWire[] =>
    (design.wiresAt.get(pinOf(cavity)) ?? []).map((wire) => ({
      id: wire.id,
      number: numberOf(wire),
      colours: wire.colour ?? null,
      areaMm2: design.conductors.get(wire.id)?.areaMm2 ?? null,
      code: colourCode(wire.colour, letters),
    }));
  const rowCount = connector.rowCount ?? 1;
  const perRow = Math.ceil(connector.cavities.length / rowCount);
  const rows = Array.from({ length: rowCount }, (_, i) =>
    connector.cavities.slice(i * perRow, (i + 1) * perRow),
  ).filter((row) => row.length > 0);
  return {
    id: connector.id,
    name: connector.id,
    place: half,
    view,
    rows: rows.map((row) =>
      row.map((label) => ({ label, pin: pinOf(label), wires: wiresAt(label) })),
    ),
    keyAt: null,
  };
}
