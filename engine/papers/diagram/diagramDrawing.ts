import { type Mark, type MarkSubject, moveMarks } from "../../drawing/index.ts";
import {
  type DiagramLayout,
  type LadderWords,
  layoutDiagram,
  type PlacedSegment,
} from "../../layout/index.ts";
import { levelsOf } from "../circuit/levels.ts";
import { type Link, type MachineGraph, machineGraph } from "../circuit/machineGraph.ts";
import type { PaperInput } from "../paperInput.ts";
import { pointSubject } from "../pointSubject.ts";
import { numberOf } from "../wireRows.ts";
import { columnFeet, FOOT_MM } from "./columnFeet.ts";
import { crossLinks } from "./crossLinks.ts";
import { itemMaker, type LetteredItem } from "./diagramItems.ts";
import { diagramLadder, pointsOfParts } from "./diagramLadder.ts";
import { itemMarks, upright } from "./itemMarks.ts";
import { machinePaths } from "./machinePaths.ts";
import { type NodesDrawn, nodeMarks, railWords } from "./nodeMarks.ts";
import { partFunctions } from "./partFunctions.ts";

/** From the top of the drawing to the upper rail. */
export const HEAD_MM = 7;
const FOOT_PITCH_MM = 7.6;

export interface DiagramDrawing {
  /** From the upper left corner of the room; made when asked for. */
  readonly marks: () => readonly Mark[];
  readonly layout: DiagramLayout;
  /** Columns each part stands in, from 1. */
  readonly columnsOfPart: ReadonlyMap<string, readonly number[]>;
  /** By the `ref` of an item of the layout. */
  readonly behind: readonly LetteredItem[];
}

/**
 * The complete machine as one drawing in a room of its own size.
 *
 * @param spreadMostRatio  columns are spread to the width by no more than this; absent: twice
 */
export function diagramDrawing(
  input: PaperInput,
  widthMm: number,
  heightMm: number,
  spreadMostRatio?: number,
): DiagramDrawing {
  const { job } = input;
  const graph = machineGraph(job);
  const paths = machinePaths(graph, levelsOf(graph));
  const functions = partFunctions(paths);
  const maker = itemMaker(input, functions);
  const ladderMm = heightMm - HEAD_MM - FOOT_MM;
  const words: LadderWords = {
    to: (what) => maker.item({ kind: "words", way: "to", what: nameOf(input, what) }, true),
    from: (what) => maker.item({ kind: "words", way: "from", what: nameOf(input, what) }, false),
  };
  const layout = layoutDiagram(
    diagramLadder(job, paths, maker, ladderMm),
    { widthMm, heightMm: ladderMm, footPitchMm: FOOT_PITCH_MM, spreadMostRatio },
    job.layout?.diagram ?? {},
    words,
  );
  const drawn: Drawn = {
    input,
    graph,
    layout,
    behind: maker.behind,
    columnOf: columnsOfLinks(layout, maker.behind),
    others: (link) => crossLinks(functions, link),
    names: pointsOfParts(paths),
    rails: new Set(paths.nodes.flatMap(({ id, isRail }) => (isRail ? [id] : []))),
  };
  return {
    layout,
    behind: maker.behind,
    columnsOfPart: columnsOfParts(drawn),
    marks: () =>
      moveMarks(
        [
          ...layout.segments.flatMap((segment) => segmentMarks(drawn, segment)),
          ...layout.nodes.flatMap((node) => nodeMarks(drawn, node)),
          ...railWords(drawn),
          ...columnFeet(input, layout, maker.behind, ladderMm),
        ],
        0,
        HEAD_MM,
      ),
  };
}

/** Everything the marks are made from. */
interface Drawn extends NodesDrawn {
  readonly behind: readonly LetteredItem[];
  /** Column of each link, from 0. */
  readonly columnOf: ReadonlyMap<string, number>;
  readonly others: (link: Link) => readonly Link[];
}

/** A wire by its number, anything else as it is called. */
function nameOf({ job }: PaperInput, what: string): string {
  const wire = job.wires.find(({ id }) => id === what);
  return wire === undefined ? what.replace(".", " ") : `wire ${numberOf(wire)}`;
}

function columnsOfLinks(
  { segments }: DiagramLayout,
  behind: readonly LetteredItem[],
): ReadonlyMap<string, number> {
  return new Map(
    segments.flatMap(({ segment, column }) =>
      segment.items.flatMap(({ ref }) => {
        const { step } = behind[ref]!;
        return "link" in step ? [[step.link.key, column] as const] : [];
      }),
    ),
  );
}

function columnsOfParts({ layout, behind }: Drawn): ReadonlyMap<string, readonly number[]> {
  const columns = new Map<string, number[]>();
  for (const { segment, column } of layout.segments) {
    for (const { ref } of segment.items) {
      const { step } = behind[ref]!;
      if (step.kind !== "part") continue;
      const known = columns.get(step.link.of) ?? [];
      columns.set(
        step.link.of,
        [...new Set([...known, column + 1])].sort((a, b) => a - b),
      );
    }
  }
  return columns;
}

function segmentMarks(drawn: Drawn, placed: PlacedSegment): Mark[] {
  const { segment, items, xMm } = placed;
  const last = items.at(-1);
  const marks = items.flatMap((item, i) => {
    const made = drawn.behind[segment.items[i]!.ref]!;
    const place = {
      xMm,
      item,
      isBody: (at: string): boolean => isBodyPoint(drawn.graph, at),
      crossColumn: (nth: number): number => crossColumn(drawn, placed, made, nth) + 1,
    };
    const drawnItem = itemMarks(drawn.input, made, place);
    const { id } = segment.items[i]!;
    const of = subjectOf(drawn, made);
    return [{ kind: "group", id, of, name: groupName(made), marks: drawnItem } as const];
  });
  const startMm = items[0]?.topMm ?? placed.bottomMm;
  return [
    ...(segment.from === null ? [] : upright(xMm, placed.topMm, startMm)),
    ...gaps(
      xMm,
      items,
      segment.items.map(({ ref }) => drawn.behind[ref]!.step.kind),
    ),
    ...marks,
    ...(segment.to === null || last === undefined
      ? []
      : upright(xMm, last.bottomMm, placed.bottomMm)),
  ];
}

/** Line where a path has room to spare and nothing that stretches; none from the foot of one path to the head of the next. */
const gaps = (
  xMm: number,
  items: PlacedSegment["items"],
  kinds: readonly LetteredItem["step"]["kind"][],
): Mark[] =>
  items.flatMap((item, i) =>
    i === 0 || kinds[i] === "head" ? [] : upright(xMm, items[i - 1]!.bottomMm, item.topMm),
  );

const groupName = ({ step }: LetteredItem): string =>
  step.kind === "wire" ? `wire ${numberOf(step.link.wire!)}` : step.kind;

function subjectOf({ graph, input }: Drawn, { step }: LetteredItem): MarkSubject | undefined {
  switch (step.kind) {
    case "wire":
    case "part":
      return step.kind;
    case "cavity":
      return "connector";
    case "words":
      return input.job.wires.some(({ id }) => id === step.what) ? "wire" : undefined;
    default:
      return pointSubject(graph, step.point);
  }
}

const isBodyPoint = ({ bodies, joints, earthedPosts }: MachineGraph, at: string): boolean =>
  bodies.has(at) || !(joints.has(at) || earthedPosts.includes(at));

/** Column a piece of lettering names: where the rest of a part stands, or where a path goes on. */
function crossColumn(
  { columnOf, others, layout }: Drawn,
  placed: PlacedSegment,
  { step }: LetteredItem,
  nth: number,
): number {
  if (step.kind === "part") {
    const columns = others(step.link).map(({ key }) => columnOf.get(key)!);
    return columns.sort((a, b) => a - b)[nth]!;
  }
  const { id } = placed.segment;
  const columnOfSegment = (wanted: string): number =>
    layout.segments.find(({ segment }) => segment.id === wanted)!.column;
  if (step.kind === "words" && step.way === "from") {
    return columnOfSegment(layout.folds.find(({ lower }) => lower === id)!.upper);
  }
  if (placed.told !== null) return layout.nodes.find((node) => node.id === placed.told)!.column;
  return columnOfSegment(layout.folds.find(({ upper }) => upper === id)!.lower);
}
