import { point, type SymbolName, symbolPins } from "../../drawing/index.ts";
import type { Part } from "../../job/index.ts";
import { printNumber } from "../../units/index.ts";
import type { Link } from "../circuit/machineGraph.ts";
import { ratingText } from "../partNote.ts";
import { bare, crossLinks, type PartFunctions, partOf } from "./crossLinks.ts";
import {
  crossLine,
  DIAGRAM_CAP_MM,
  type LetteringLine,
  lettered,
  letteredLines,
  linesWidthMm,
  symbolReachMm,
} from "./diagramLettering.ts";
import {
  NAME_WIDTH_MM,
  PART_HEIGHT_MM,
  PIN_TEXT_MM,
  RATING_WIDTH_MM,
  SYMBOL_RATIO,
} from "./diagramMeasures.ts";
import type { DiagramStep } from "./diagramStep.ts";
import { beside, type Sized } from "./itemSizes.ts";

export function partSizes(
  functions: PartFunctions,
  step: DiagramStep & { readonly kind: "part" },
  symbol: SymbolName,
): Sized[] {
  const part = partOf(step.link);
  const reach = symbolReachMm(symbol, SYMBOL_RATIO);
  const pinsMm = linesWidthMm(pinNames(step).map((pin) => lettered(pin)));
  const leftMm = Math.max(reach.leftMm - feedShiftMm(symbol) + 0.3, PIN_TEXT_MM + pinsMm);
  const id = lettered(part.id, DIAGRAM_CAP_MM.part, 700);
  const cross = crossLines(functions, part, step.link);
  const told = step.link.kind === "coil" ? "" : diagramRating(part);
  // A name that tells the rating tells it alone where there is room for the name.
  const stated = part.name.includes(told) ? "" : told;
  const rating = letteredLines(stated, NAME_WIDTH_MM);
  const slim = letteredLines(told, RATING_WIDTH_MM);
  const least = linesWidthMm([lettered(told)]) <= RATING_WIDTH_MM ? slim : [];
  const name = letteredLines(part.name, NAME_WIDTH_MM);
  const textMm = symbolTextMm(symbol);
  const all = [
    [id, ...rating, ...name, ...cross],
    [id, ...slim, ...cross],
    [id, ...least, ...cross],
  ];
  return all.map((lines) => beside(lines, leftMm, textMm, PART_HEIGHT_MM));
}

/** Of a fuse its amperes, of a lamp the watts alone: the volts stand on the plate. */
const diagramRating = (part: Part): string =>
  part.kind === "fuse"
    ? `${printNumber(part.ratingA, part.ratingA % 1 === 0 ? 0 : 1)}\u00A0A`
    : part.kind === "lamp" && part.filaments.length > 0
      ? part.filaments
          .map(({ ratedW }) => printNumber(ratedW, ratedW % 1 === 0 ? 0 : 1))
          .join("/")
          .concat("\u00A0W")
      : ratingText(part);

/** Room for the columns where the rest of the part stands: contacts of a coil, the coil of a contact, the other contacts of a switch, the other filaments of a lamp. */
function crossLines(functions: PartFunctions, part: Part, link: Link): readonly LetteringLine[] {
  const lines = crossLinks(functions, link).map((_, i) => crossLine("in", i));
  if (part.kind === "relay" || part.kind === "lamp") return lines;
  return part.kind === "switch" ? lines : [];
}

/** Pins are named where a part has more than its two ends. */
export function pinNames(step: DiagramStep & { readonly kind: "part" }): readonly string[] {
  return partOf(step.link).pins.length > 2 ? [bare(step.pinAbove), bare(step.pinBelow)] : [];
}

/** A symbol whose feed stands beside its middle is moved so that its feed is on the line. */
export function feedShiftMm(symbol: SymbolName): number {
  const { feed } = symbolPins({ symbol, at: point(0, 0) });
  return feed === undefined ? 0 : -feed.xMm * SYMBOL_RATIO;
}

/** From the line to the lettering at the right of a symbol that has its feed on the line. */
export const symbolTextMm = (symbol: SymbolName): number =>
  symbolReachMm(symbol, SYMBOL_RATIO).rightMm + feedShiftMm(symbol) + 0.9;
