import type { SymbolName } from "../../drawing/index.ts";
import type { LadderBox, LadderItem } from "../../layout/index.ts";
import { partSymbol } from "../circuit/partSymbol.ts";
import type { PaperInput } from "../paperInput.ts";
import { type PartFunctions, partOf } from "./crossLinks.ts";
import type { LetteringLine } from "./diagramLettering.ts";
import type { DiagramStep } from "./diagramStep.ts";
import { sizedLines } from "./itemSizes.ts";

/** What stands behind one item of the layout. */
export interface LetteredItem {
  readonly step: DiagramStep;
  /** Lettering of each of the item's boxes. */
  readonly lines: readonly (readonly LetteringLine[])[];
  /** Which of them run along the line. */
  readonly turned: readonly boolean[];
  readonly symbol?: SymbolName;
}

/** Makes items of steps, and keeps what stands behind each. */
export interface ItemMaker {
  readonly item: (step: DiagramStep, isLow: boolean) => LadderItem;
  /** By the `ref` of an item. */
  readonly behind: readonly LetteredItem[];
}

export function itemMaker(input: PaperInput, functions: PartFunctions): ItemMaker {
  const behind: LetteredItem[] = [];
  const item = (step: DiagramStep, isLow: boolean): LadderItem => {
    const symbol = step.kind === "part" ? partSymbol(step.link, partOf(step.link)) : undefined;
    const sized = sizedLines(input, functions, step, symbol);
    const made: LadderItem = {
      id: idOf(step),
      ref: behind.length,
      isElastic: step.kind === "wire",
      isLow,
      boxes: sized.map(([, box]) => box) as [LadderBox, ...LadderBox[]],
    };
    behind.push({
      step,
      lines: sized.map(([lines]) => lines),
      turned: sized.map(([, , way]) => way === "turned"),
      ...(symbol ? { symbol } : {}),
    });
    return made;
  };
  return { item, behind };
}

function idOf(step: DiagramStep): string {
  switch (step.kind) {
    case "wire":
    case "part":
    case "cavity":
      return step.link.of;
    case "earth":
    case "terminal":
    case "head":
      return step.point;
    case "words":
      return step.what;
  }
}
