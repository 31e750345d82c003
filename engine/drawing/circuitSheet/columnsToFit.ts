import type { CircuitColumn, CircuitStep, JointPlace } from "./circuitSheetInput.ts";
import { columnLevels } from "./columnLevels.ts";
import { columnPages } from "./columnPages.ts";
import type { RailsAsked } from "./pageLayout.ts";
import {
  type FittingColumn,
  jointNotes,
  type Words,
  wordedColumns,
  wordsText,
} from "./wordedColumns.ts";

export interface FittedColumns {
  readonly columns: readonly FittingColumn[];
  /** False where a single step is taller than the paper. */
  readonly fits: boolean;
}

/**
 * Columns made to fit a height: branches and joins across more than one column, or in a ring, are told in words; a column that is still too
 * tall goes on in a column of its own at the top.
 */
export function columnsToFit(
  input: readonly CircuitColumn[],
  rails: RailsAsked,
  widthMm: number,
): FittedColumns {
  let columns: readonly FittingColumn[] = input;
  const roundMax = input.reduce((sum, column) => sum + 2 * column.steps.length + 4, 8);
  for (let round = 0; round < roundMax; round++) {
    const better = withOneThingMended(columns, rails, widthMm);
    if (better === "nothing wrong") return { columns, fits: true };
    if (better === "cannot be mended") return { columns, fits: false };
    columns = better;
  }
  return { columns, fits: false };
}

function withOneThingMended(
  columns: readonly FittingColumn[],
  rails: RailsAsked,
  widthMm: number,
): FittingColumn[] | "nothing wrong" | "cannot be mended" {
  const distant = columns.findIndex((_, i) => isDistant(columns, i));
  if (distant >= 0) return replaced(columns, distant, [inWords(columns, distant)]);
  const levels = columnLevels(wordedColumns(columns), rails.sizes);
  if (!levels) {
    const joining = columns.findIndex(({ end }) => end.kind === "join");
    return replaced(columns, joining, [endInWords(columns, joining)]);
  }
  const tall = levels.findIndex((level) => level.bottomMm > rails.mostMm + 1e-6);
  if (tall < 0) return withoutTiesAcrossPages(columns, widthMm, rails) ?? "nothing wrong";
  const column = columns[tall]!;
  if (column.start.kind === "branch") return replaced(columns, tall, [startInWords(columns, tall)]);
  const held = columns.findIndex(({ end }) => end.kind === "join" && end.column === column.id);
  if (held >= 0) return replaced(columns, held, [endInWords(columns, held)]);
  if (column.end.kind === "join") return replaced(columns, tall, [endInWords(columns, tall)]);
  return (
    splitColumns(columns, tall, levels[tall]!.stepsMm, rails) ??
    withoutTiesAcrossPages(columns, widthMm, rails) ??
    "cannot be mended"
  );
}

/** Columns drawn across to each other that do not fit on one page: the first way that a page would cut is told in words. */
function withoutTiesAcrossPages(
  columns: readonly FittingColumn[],
  widthMm: number,
  rails: RailsAsked,
): FittingColumn[] | null {
  const pages = columnPages(wordedColumns(columns), jointNotes(columns), widthMm, rails);
  const cut = pages.find(({ from }) => from > 0 && isTied(columns[from]!))?.from;
  if (cut === undefined) return null;
  const isBranch = columns[cut]!.start.kind === "branch";
  return replaced(columns, cut, [isBranch ? startInWords(columns, cut) : endInWords(columns, cut)]);
}

const isTied = ({ start, end }: FittingColumn): boolean =>
  start.kind === "branch" || end.kind === "join";

/** Only neighbours are drawn across: a branch from the column at the left, a join to it. */
function isDistant(columns: readonly FittingColumn[], index: number): boolean {
  const { start, end } = columns[index]!;
  const before = columns[index - 1]?.id;
  return (
    (start.kind === "branch" && start.column !== before) ||
    (end.kind === "join" && end.column !== before)
  );
}

function inWords(columns: readonly FittingColumn[], index: number): FittingColumn {
  const column = columns[index]!;
  const before = columns[index - 1]?.id;
  const startIsDistant = column.start.kind === "branch" && column.start.column !== before;
  return startIsDistant ? startInWords(columns, index) : endInWords(columns, index);
}

function wordsFor(columns: readonly FittingColumn[], { column, joint }: JointPlace): Words {
  const step = columns
    .find(({ id }) => id === column)
    ?.steps.find((each) => each.kind === "joint" && each.id === joint);
  if (step?.kind !== "joint")
    throw new Error(`column ${column} of a circuit sheet has no joint ${joint}`);
  return { kind: "words", column, joint, what: step.name };
}

function startInWords(columns: readonly FittingColumn[], index: number): FittingColumn {
  const column = columns[index]!;
  const { start } = column;
  return start.kind === "branch" ? { ...column, start: wordsFor(columns, start) } : column;
}

function endInWords(columns: readonly FittingColumn[], index: number): FittingColumn {
  const column = columns[index]!;
  const { end } = column;
  return end.kind === "join" ? { ...column, end: wordsFor(columns, end) } : column;
}

/** Cuts before the last step that still leaves room for the arrow; null where nothing can be cut. */
function splitColumns(
  columns: readonly FittingColumn[],
  index: number,
  stepsMm: readonly number[],
  { mostMm, sizes }: RailsAsked,
): FittingColumn[] | null {
  const column = columns[index]!;
  const arrowMm = (step: CircuitStep): number =>
    sizes.end({ kind: "reference", label: wordsText(goingOn("", step), "to", "88") }).heightMm;
  let at = column.steps.length - 1;
  while (at > 0 && stepsMm[at]! + arrowMm(column.steps[at]!) > mostMm) at--;
  if (at <= 0) return null;
  const restId = `${column.id}, continued`;
  const upper = column.steps.slice(0, at);
  const lower = column.steps.slice(at);
  const parts: FittingColumn[] = [
    { ...column, steps: upper, end: goingOn(restId, lower[0]!) },
    { id: restId, start: goingOn(column.id, upper.at(-1)!), steps: lower, end: column.end },
  ];
  return replaced(columns, index, parts).map((each) => pointedAt(each, column.id, restId, lower));
}

const goingOn = (column: string, step: CircuitStep): Words => ({
  kind: "words",
  column,
  joint: null,
  what: step.kind === "wire" ? `wire ${step.number}` : step.name,
});

/** Ways to a joint that has moved to the lower part of a cut column. */
function pointedAt(
  column: FittingColumn,
  fromId: string,
  toId: string,
  moved: readonly CircuitStep[],
): FittingColumn {
  const turned = <Way extends FittingColumn["start"] | FittingColumn["end"]>(way: Way): Way => {
    if (!("joint" in way) || way.column !== fromId || column.id === toId) return way;
    return moved.some(({ id }) => id === way.joint) ? { ...way, column: toId } : way;
  };
  return { ...column, start: turned(column.start), end: turned(column.end) };
}

const replaced = (
  columns: readonly FittingColumn[],
  index: number,
  by: readonly FittingColumn[],
): FittingColumn[] => [...columns.slice(0, index), ...by, ...columns.slice(index + 1)];
