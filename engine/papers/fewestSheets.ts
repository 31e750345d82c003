import type { Orientation, Paper, Sheet } from "../drawing/index.ts";
import type { PaperInput } from "./paperInput.ts";

/** A paper laid both ways round; the first of `order` that takes no more sheets than the other stays. */
export function fewestSheets(
  { paper }: PaperInput,
  laid: (paper: Paper) => readonly Sheet[],
  order: readonly [Orientation, Orientation] = ["portrait", "landscape"],
): readonly Sheet[] {
  const [first, second] = [
    laid({ size: paper, orientation: order[0] }),
    laid({ size: paper, orientation: order[1] }),
  ];
  return second.length < first.length ? second : first;
}
