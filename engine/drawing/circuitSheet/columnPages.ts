import type { CircuitColumn } from "./circuitSheetInput.ts";
import type { JointNotes } from "./columnBoxes.ts";
import { pageLayout, type RailsAsked } from "./pageLayout.ts";

/** Columns page by page; columns drawn across to each other stay on one page. */
export function columnPages(
  columns: readonly CircuitColumn[],
  notes: JointNotes,
  widthMm: number,
  rails: RailsAsked,
): { readonly from: number; readonly to: number }[] {
  const pages: { from: number; to: number }[] = [];
  let from = 0;
  while (from < columns.length) {
    let to = from + 1;
    let lastCut = isFree(columns, to, rails) ? to : from;
    while (to < columns.length && (to - from < rails.columnsMostCount || lastCut === from)) {
      const page = pageLayout(untied(columns.slice(from, to + 1)), notes, rails);
      if (page === null || page.widthMm > widthMm) break;
      to++;
      if (isFree(columns, to, rails)) lastCut = to;
    }
    const end = to === columns.length ? to : lastCut > from ? lastCut : to;
    pages.push({ from, to: end });
    from = end;
  }
  return pages;
}

/** Whether a page may end before a column. */
const isFree = (columns: readonly CircuitColumn[], at: number, { cutsTies }: RailsAsked): boolean =>
  cutsTies || at >= columns.length || !isTiedToNeighbour(columns[at]!);

/** The first column of a page has no neighbour to be drawn across to. */
const untied = ([first, ...rest]: readonly CircuitColumn[]): readonly CircuitColumn[] => [
  {
    ...first!,
    start: first!.start.kind === "branch" ? { kind: "feed" } : first!.start,
    end: first!.end.kind === "join" ? { kind: "earth" } : first!.end,
  },
  ...rest,
];

/** Whether a column starts or ends at a joint of another, drawn across. */
export const meetsJoint = (
  next: CircuitColumn | undefined,
  column: string,
  joint: string,
): boolean =>
  [next?.start, next?.end].some(
    (way) => way !== undefined && "joint" in way && way.column === column && way.joint === joint,
  );

const isTiedToNeighbour = ({ start, end }: CircuitColumn): boolean =>
  start.kind === "branch" || end.kind === "join";
