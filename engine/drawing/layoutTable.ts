import { type FlowedPage, flowBlocks } from "./block.ts";
import type { AreaMm } from "./scene.ts";
import type { Table } from "./table.ts";
import { tableBlocks } from "./tableBlocks.ts";

/** A table alone, laid down page after page: the first area, then `next` for all that follow. */
export function layoutTable(table: Table, first: AreaMm, next: AreaMm = first): FlowedPage[] {
  const heightMaxMm = Math.min(first.heightMm, next.heightMm);
  return flowBlocks(tableBlocks(table, first.widthMm, heightMaxMm), first, next);
}
