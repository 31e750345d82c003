import {
  type AreaMm,
  moveMarks,
  type Paper,
  type PaperSize,
  type Sheet,
  type SheetHead,
  scaleMarks,
  sheetRoom,
} from "../../drawing/index.ts";
import type { DiagramLayout } from "../../layout/index.ts";
import { lettersName } from "../colourText.ts";
import type { PaperInput } from "../paperInput.ts";
import { contactStrip } from "./contactStrip.ts";
import { diagramDrawing } from "./diagramDrawing.ts";

/** Sizes of the lettering series: 2.5 mm and more, or one step of root 2 smaller, where capitals are 1.8 mm and more. */
const SET_RATIOS = [1, Math.SQRT1_2] as const;

export interface DiagramSheet {
  readonly sheet: Sheet;
  readonly layout: DiagramLayout;
  /** How large it is set. */
  readonly setRatio: number;
  readonly fits: boolean;
}

/** The complete machine on one sheet of a size: in the larger lettering where that has room, else one step smaller. */
export function diagramSheet(input: PaperInput, size: PaperSize): DiagramSheet {
  const paper: Paper = { size, orientation: "landscape" };
  const head = headOf(input);
  const { content } = sheetRoom(paper, input.info, head);
  const { drawn, stripTopMm, setRatio } = best(
    SET_RATIOS.map((setRatio) => () => inRoom(input, content, setRatio)),
  );
  const strip = contactStrip(input, drawn.columnsOfPart, content.widthMm / setRatio);
  const contacts = moveMarks(strip.marks, 0, stripTopMm);
  const marks = moveMarks(
    scaleMarks([...drawn.marks(), ...contacts], setRatio),
    content.xMm,
    content.yMm,
  );
  return {
    setRatio,
    layout: drawn.layout,
    fits: drawn.layout.fits,
    sheet: {
      paper,
      documentName: "whole diagram",
      head,
      bookmark: [head.title, size.toUpperCase()],
      marks,
    },
  };
}

type InRoom = ReturnType<typeof inRoom>;

/** The first whose paths stand whole; else the first that fits with some cut; else the last, which does not fit. */
function best(ways: readonly (() => InRoom)[]): InRoom {
  const tried: InRoom[] = [];
  for (const way of ways) {
    const one = way();
    if (one.drawn.layout.fits && one.drawn.layout.folds.length === 0) return one;
    tried.push(one);
  }
  return tried.find(({ drawn }) => drawn.layout.fits) ?? tried.at(-1)!;
}

function inRoom(input: PaperInput, content: AreaMm, setRatio: number) {
  const widthMm = content.widthMm / setRatio;
  const heightMm = content.heightMm / setRatio;
  const stripTopMm = heightMm - contactStrip(input, new Map(), widthMm).heightMm;
  return { drawn: diagramDrawing(input, widthMm, stripTopMm), stripTopMm, setRatio };
}

function headOf({ job }: PaperInput): SheetHead {
  return {
    title: "Whole diagram",
    lead: `Everything at rest: key off, engine stopped. Feed above, earth below, one column a current path. At each wire: number, colour, mm². Colours in ${lettersName(job.colours.letters)}.`,
  };
}
