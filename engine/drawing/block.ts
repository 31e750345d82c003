import { type AreaMm, area, type Mark } from "./scene.ts";
import { moveMarks } from "./transformMark.ts";

/** A strip of a page, drawn from its own top left corner. Blocks are stacked and never cut. */
export interface Block {
  readonly heightMm: number;
  readonly marks: readonly Mark[];
  readonly gapAfterMm?: number | undefined;
  /** At least this much above, unless it is the first on its page. */
  readonly gapBeforeMm?: number | undefined;
  /** Not to be the last on a page. */
  readonly keepWithNext?: boolean | undefined;
  /** Always first on a page. */
  readonly startsPage?: boolean | undefined;
  /** Repeated above the block where it comes first on a page it does not begin: column headings. */
  readonly repeatedAbove?: readonly Block[] | undefined;
}

export interface FlowedPage {
  readonly marks: readonly Mark[];
  /** How far down the page the blocks reach. */
  readonly endYMm: number;
}

/**
 * Stacks blocks down an area, page after page. A chain of blocks that are to stay together moves on as one, unless it is taller than a page.
 *
 * @throws  where one block is taller than the area: whoever made it must cut it (`tableBlocks` cuts its rows)
 */
export function flowBlocks(
  blocks: readonly Block[],
  first: AreaMm,
  next: AreaMm = first,
): FlowedPage[] {
  const pages: { marks: Mark[]; endYMm: number }[] = [{ marks: [], endYMm: first.yMm }];
  let room = first;
  let yMm = first.yMm;
  const place = (block: Block): void => {
    const page = pages.at(-1)!;
    page.marks.push(...moveMarks(block.marks, room.xMm, yMm));
    page.endYMm = yMm + block.heightMm;
    yMm = page.endYMm + (block.gapAfterMm ?? 0);
  };
  blocks.forEach((block, i) => {
    const isFresh = yMm === room.yMm;
    const endMm = pages.at(-1)!.endYMm;
    if (!isFresh) yMm = Math.max(yMm, endMm + (block.gapBeforeMm ?? 0));
    const bottomMm = room.yMm + room.heightMm + 1e-6;
    const chainMm = Math.min(chainHeightMm(blocks, i), next.heightMm - aboveMm(block));
    if (!isFresh && (block.startsPage || yMm + Math.max(chainMm, block.heightMm) > bottomMm)) {
      room = next;
      yMm = next.yMm;
      pages.push({ marks: [], endYMm: yMm });
      for (const above of block.repeatedAbove ?? []) place(above);
    }
    if (yMm + block.heightMm > room.yMm + room.heightMm + 1e-6) {
      throw new Error(
        `a block of ${block.heightMm.toFixed(1)} mm is taller than the ${room.heightMm.toFixed(1)} mm it is laid into`,
      );
    }
    place(block);
  });
  return pages;
}

const aboveMm = (block: Block): number =>
  (block.repeatedAbove ?? []).reduce((sumMm, each) => sumMm + each.heightMm, 0);

/** Height of a block and of those it must not be parted from. */
function chainHeightMm(blocks: readonly Block[], from: number): number {
  let sumMm = 0;
  for (let i = from; i < blocks.length; i++) {
    const block = blocks[i]!;
    sumMm += block.heightMm;
    if (!block.keepWithNext) break;
    sumMm += block.gapAfterMm ?? 0;
  }
  return sumMm;
}

/** The part of an area left under a height already used. */
export const below = (whole: AreaMm, yMm: number): AreaMm =>
  area(whole.xMm, yMm, whole.widthMm, whole.yMm + whole.heightMm - yMm);
