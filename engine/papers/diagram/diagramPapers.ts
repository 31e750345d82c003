import type { PaperSize } from "../../drawing/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { diagramSheet } from "./diagramSheets.ts";
import { diagramTiles } from "./diagramTiles.ts";

const SINGLE_SIZES: readonly PaperSize[] = ["a3", "a2"];

/**
 * The whole diagram on each of the sizes that hold it, in colour and for a printer with black ink alone, and the largest of them in tiles for the pack's own
 * paper. None where no size holds it at lettering of 1.8 mm: the circuit sheets show everything.
 */
export function diagramPapers(input: PaperInput, name: string): readonly PackPaper[] {
  const fitting = SINGLE_SIZES.map((size) => ({ size, ...diagramSheet(input, size) })).filter(
    ({ fits }) => fits,
  );
  const largest = fitting.at(-1);
  if (largest === undefined) return [];
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
    title: `Whole diagram, ${largest.size.toUpperCase()} in tiles`,
    sheets: diagramTiles(input.info, largest.sheet, input.paper),
    rows: null,
    drawings: null,
  };
  return [...singles, tiled];
}
