import type { TableCell } from "../drawing/index.ts";
import type { Colour, Job } from "../job/index.ts";
import { allTables } from "../tables/index.ts";

type Letters = Job["colours"]["letters"];

const COLUMN = { iec: "iec60757", british: "au7", german: "german", japanese: "japanese" } as const;
const SYSTEM = {
  iec: "IEC 60757 letters",
  british: "British letters",
  german: "German letters",
  japanese: "Japanese letters",
} as const;
/** Between main colour and tracer: British and IEC codes run together, the others are written with a stroke. */
const BETWEEN = { iec: "/", british: "", german: "/", japanese: "/" } as const;

/** Name of the letter system, printed once on every sheet that shows codes. */
export const lettersName = (letters: Letters): string => SYSTEM[letters];

function letterOf(word: string, letters: Letters): string {
  const row = allTables.colours.rows.find((one) => one.word === word);
  // A colour the system has no letter for is written as the drawing code of the colour table.
  return row?.[COLUMN[letters]] ?? row?.drawingCode ?? word;
}

/** Colour as code: `NU`, `Bk/W`. */
export function colourCode(colour: Colour | undefined, letters: Letters): string {
  if (colour === undefined) return "?";
  return [colour.main, colour.tracer, colour.secondTracer]
    .filter((word) => word !== undefined)
    .map((word) => letterOf(word, letters))
    .join(BETWEEN[letters]);
}

/** Colour as words, main colour first: `brown, blue`. */
export function colourWords(colour: Colour | undefined): string {
  if (colour === undefined) return "colour not chosen";
  const { main, tracer, secondTracer } = colour;
  return [main, tracer, secondTracer].filter((word) => word !== undefined).join(", ");
}

/** A table cell that shows the wire, then code and words on one line. */
export const colourLineCell = (
  colour: Colour | undefined,
  areaMm2: number | null,
  letters: Letters,
): TableCell => ({
  kind: "wire",
  colours: colour ?? null,
  areaMm2,
  code: `${colourCode(colour, letters)}  ${colourWords(colour)}`,
  word: "",
});

/** A table cell that shows the wire, its code, and its words under that. */
export const colourCell = (
  colour: Colour | undefined,
  areaMm2: number | null,
  letters: Letters,
): TableCell => ({
  kind: "wire",
  colours: colour ?? null,
  areaMm2,
  code: colourCode(colour, letters),
  word: colourWords(colour),
});
