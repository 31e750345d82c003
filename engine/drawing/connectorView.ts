import type { Drawn } from "./drawn.ts";
import { CAP_MM, LINE_MM } from "./lineWidth.ts";
import { measureTextMm } from "./measureTextMm.ts";
import { type AreaMm, area, type Mark, point, type WireColours } from "./scene.ts";
import { TEXT_STYLE, textMark } from "./textBlock.ts";

export interface ConnectorWire {
  readonly id: string;
  readonly number: string;
  readonly colours: WireColours | null;
  readonly areaMm2: number | null;
  /** Letters of the colour in the job's letter system. */
  readonly code: string;
}

export interface ConnectorViewInput {
  readonly id: string;
  /** "X2". */
  readonly name: string;
  /** "in the headlamp shell, plug". */
  readonly place: string;
  /** Which side is drawn. Cavities are given as seen from the wire side; the mating side is that, left and right exchanged. */
  readonly view: "wire side" | "mating side";
  /** Rows from the top, cavities from the left, seen from the wire side. */
  readonly rows: readonly (readonly {
    readonly label: string;
    /** "X2.4p". */
    readonly pin?: string | undefined;
    /** Empty: a blank. */
    readonly wires: readonly ConnectorWire[];
  }[])[];
  /** Where the latch or key is, seen from the wire side; null where it has none. */
  readonly keyAt: "top" | "bottom" | null;
}

type Cavity = ConnectorViewInput["rows"][number][number];

const CELL_MIN_MM = 14;
const LABEL_MM = 4.2;
const WIRE_MM = 11.5;
const WALL_MM = 2;
const KEY_MM = 2.5;
const HEAD_MM = 11.5;
const SWATCH_MM = 6;

/** The end of a plug or socket as it is held in the hand: cavities numbered, each with its wire's number, a piece of the wire and its code; blanks crossed. */
export function connectorView(input: ConnectorViewInput): Drawn {
  const isMating = input.view === "mating side";
  const rows = isMating ? input.rows.map((row) => row.toReversed()) : input.rows;
  const cavities = rows.flat();
  const cellMm = Math.max(CELL_MIN_MM, ...cavities.map(cavityWidthMm));
  const wireCount = Math.max(1, ...cavities.map(({ wires }) => wires.length));
  const cellHeightMm = LABEL_MM + wireCount * WIRE_MM;
  const columnCount = Math.max(...rows.map((row) => row.length));
  const shellWidthMm = columnCount * cellMm + 2 * WALL_MM;
  const shellHeightMm = rows.length * cellHeightMm + 2 * WALL_MM;
  const shellTopMm = HEAD_MM + (input.keyAt === "top" ? KEY_MM : 0);
  const shell = area(0, shellTopMm, shellWidthMm, shellHeightMm);
  const cells = rows.flatMap((row, j) => {
    const startMm = WALL_MM + ((columnCount - row.length) * cellMm) / 2;
    return row.flatMap((cavity, i) =>
      ownMarks(
        cavity,
        cavityMarks(
          cavity,
          area(startMm + i * cellMm, shellTopMm + WALL_MM + j * cellHeightMm, cellMm, cellHeightMm),
        ),
      ),
    );
  });
  const blankCount = cavities.filter(({ wires }) => wires.length === 0).length;
  const blanks = blankCount === 0 ? "" : `, ${blankCount} blank`;
  const under = `seen from ${input.view}, ${cavities.length} way${blanks}`;
  const title = `${input.name} ${input.place}`.trim();
  const marks: Mark[] = [
    textMark(title, 0, 4.2, TEXT_STYLE.part),
    textMark(under, 0, 8.9, TEXT_STYLE.text),
    ...keyMarks(input.keyAt, shell),
    {
      kind: "rect",
      area: shell,
      cornerMm: 1.5,
      stroke: { widthMm: LINE_MM.frame, colour: "ink" },
      fill: "ground",
    },
    ...cells,
  ];
  return {
    marks: [{ kind: "group", id: input.id, of: "connector", name: `${title}, ${under}`, marks }],
    widthMm: Math.max(
      shellWidthMm,
      measureTextMm(title, CAP_MM.part, 700),
      measureTextMm(under, CAP_MM.text, 400),
    ),
    heightMm: shellTopMm + shellHeightMm + (input.keyAt === "bottom" ? KEY_MM : 0),
  };
}

const ownMarks = ({ pin }: Cavity, marks: readonly Mark[]): readonly Mark[] =>
  pin === undefined ? marks : [{ kind: "group", id: pin, of: "pin", marks }];

const cavityWidthMm = ({ label, wires }: Cavity): number =>
  3 +
  Math.max(
    measureTextMm(label, CAP_MM.fine, 700),
    ...wires.map(({ number }) => measureTextMm(number, CAP_MM.wireNumber, 800)),
    ...wires.map(({ code }) => SWATCH_MM + 1 + measureTextMm(code, CAP_MM.text, 700)),
  );

function keyMarks(keyAt: ConnectorViewInput["keyAt"], shell: AreaMm): Mark[] {
  if (keyAt === null) return [];
  const widthMm = Math.min(10, shell.widthMm / 2);
  const yMm = keyAt === "top" ? shell.yMm - KEY_MM : shell.yMm + shell.heightMm;
  return [
    {
      kind: "rect",
      area: area(shell.xMm + (shell.widthMm - widthMm) / 2, yMm, widthMm, KEY_MM),
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
      fill: "ground",
    },
  ];
}

function cavityMarks(cavity: Cavity, cell: AreaMm): Mark[] {
  const middleMm = cell.xMm + cell.widthMm / 2;
  const label = { ...TEXT_STYLE.fine, colour: "ink", weight: 700 } as const;
  const marks: Mark[] = [
    { kind: "rect", area: cell, stroke: { widthMm: LINE_MM.detail, colour: "ink" } },
    textMark(cavity.label, cell.xMm + 1.2, cell.yMm + 3, label),
  ];
  if (cavity.wires.length === 0) return [...marks, ...blankMarks(cell)];
  cavity.wires.forEach((wire, i) => {
    const topMm = cell.yMm + LABEL_MM + i * WIRE_MM;
    const codeMm = measureTextMm(wire.code, CAP_MM.text, 700);
    const leftMm = middleMm - (SWATCH_MM + 1 + codeMm) / 2;
    marks.push(
      textMark(wire.number, middleMm, topMm + CAP_MM.wireNumber, TEXT_STYLE.wireNumber, "middle"),
      {
        kind: "wire",
        id: wire.id,
        points: [point(leftMm, topMm + 8.35), point(leftMm + SWATCH_MM, topMm + 8.35)],
        areaMm2: wire.areaMm2,
        colours: wire.colours,
      },
      textMark(wire.code, leftMm + SWATCH_MM + 1, topMm + 9.6, TEXT_STYLE.strong),
    );
  });
  return marks;
}

/** A cross through the cavity's middle, and the word. */
function blankMarks(cell: AreaMm): Mark[] {
  const middle = point(cell.xMm + cell.widthMm / 2, cell.yMm + cell.heightMm / 2);
  const stroke = { widthMm: LINE_MM.detail, colour: "ink" } as const;
  const cross = ([-1, 1] as const).map(
    (side): Mark => ({
      kind: "line",
      from: point(middle.xMm - 2, middle.yMm - 2 * side),
      to: point(middle.xMm + 2, middle.yMm + 2 * side),
      stroke,
    }),
  );
  const word = { ...TEXT_STYLE.fine, colour: "ink" } as const;
  return [...cross, textMark("blank", middle.xMm, middle.yMm + 4.6, word, "middle")];
}
