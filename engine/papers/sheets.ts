import {
  type AreaMm,
  type Block,
  flowBlocks,
  layoutTable,
  type Orientation,
  type Paper,
  type Sheet,
  type SheetHead,
  sheetRoom,
  type Table,
} from "../drawing/index.ts";
import type { PaperInput } from "./paperInput.ts";

/** How a sheet is named, led in and laid. */
export interface SheetPlan {
  /** "wire list": what the document is called in its title block. */
  readonly documentName: string;
  readonly head: SheetHead;
  readonly orientation: Orientation;
}

/** A table flowed over as many sheets as it needs. */
export function tableSheets(input: PaperInput, plan: SheetPlan, table: Table): readonly Sheet[] {
  const paper: Paper = { size: input.paper, orientation: plan.orientation };
  const { content } = sheetRoom(paper, input.info, plan.head);
  return layoutTable(table, content).map(({ marks }, i) => sheet(paper, plan, marks, i));
}

/** Blocks (headings, paragraphs, tables in strips) flowed over as many sheets as they need. `make` is told the room of a page. */
export function blockSheets(
  input: PaperInput,
  plan: SheetPlan,
  make: (content: AreaMm) => readonly Block[],
): readonly Sheet[] {
  const paper: Paper = { size: input.paper, orientation: plan.orientation };
  const { content } = sheetRoom(paper, input.info, plan.head);
  return flowBlocks(make(content), content).map(({ marks }, i) => sheet(paper, plan, marks, i));
}

function sheet(paper: Paper, plan: SheetPlan, marks: Sheet["marks"], index: number): Sheet {
  const { documentName, head } = plan;
  const bookmark = index === 0 ? [head.title] : [head.title, `continued ${index + 1}`];
  return { paper, documentName, head, bookmark, marks };
}
