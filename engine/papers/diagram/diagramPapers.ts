import {
  CAP_MM,
  framedDocument,
  type Page,
  type PaperSize,
  scaleMarks,
} from "../../drawing/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import type { TilePrint } from "../tiles/tiling.ts";
import { DIAGRAM_CAP_MM } from "./diagramLettering.ts";
import { type DiagramSheet, diagramSheet } from "./diagramSheets.ts";
import { diagramTiles } from "./diagramTiles.ts";

const SINGLE_SIZES: readonly PaperSize[] = ["a3", "a2"];

/**
 * The whole diagram on each of the sizes that hold it, in colour and for a printer with black ink alone, the smallest that shows it whole in the larger
 * lettering (or else the largest) in tiles for the pack's own paper, and for a roll as large as makes wire numbers 5 mm high. None where no size holds it at lettering of 1.8 mm: the circuit sheets show everything.
 */
export function diagramPapers(
  input: PaperInput,
  name: string,
  print: TilePrint,
): readonly PackPaper[] {
  const fitting = SINGLE_SIZES.map((size) => ({ size, ...diagramSheet(input, size) })).filter(
    ({ fits }) => fits,
  );
  const whole = fitting.find(isWhole) ?? fitting.at(-1);
  if (whole === undefined) return [];
  const singles = fitting.flatMap(({ size, sheet }): PackPaper[] => {
    const title = `Whole diagram, ${size.toUpperCase()}`;
    const one = { title, sheets: [sheet], rows: null };
    return [
      { ...one, name: `${name}-${size}`, drawings: [`${name}-${size}`] },
      {
        ...one,
        name: `${name}-${size}-black`,
        title: `${title}, black ink`,
        drawings: null,
        isBlack: true,
      },
    ];
  });
  const tiled: PackPaper = {
    name: `${name}-tiles`,
    title: `Whole diagram, ${whole.size.toUpperCase()} in tiles`,
    sheets: diagramTiles(input.info, whole.sheet, print),
    rows: null,
    drawings: null,
    plots: [{ name: `${name}-roll`, page: rollPage(input, whole) }],
  };
  return [...singles, tiled];
}

/** Nothing is set smaller, and no path is cut. */
const isWhole = ({ setRatio, layout }: DiagramSheet): boolean =>
  setRatio === 1 && layout.folds.length === 0;

/** The sheet as large as makes wire numbers as high as on every other paper, to be read standing. */
function rollPage({ info }: PaperInput, { sheet, setRatio }: DiagramSheet): Page {
  const { title } = sheet.head;
  const page = framedDocument(info, title, [sheet]).pages[0]!;
  const ratio = CAP_MM.wireNumber / (DIAGRAM_CAP_MM.number * setRatio);
  return {
    ...page,
    title: `${title}, roll`,
    bookmark: [title],
    widthMm: page.widthMm * ratio,
    heightMm: page.heightMm * ratio,
    marks: scaleMarks(page.marks, ratio),
  };
}
