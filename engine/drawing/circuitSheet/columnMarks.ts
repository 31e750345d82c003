import { CAP_MM, LINE_MM } from "../lineWidth.ts";
import { type Mark, point } from "../scene.ts";
import { TEXT_STYLE, textMark } from "../textBlock.ts";
import type { CircuitColumn, CircuitStep, ColumnEnd, ColumnStart } from "./circuitSheetInput.ts";
import { connectorStepMarks, leadMark, partStepMarks, wireStepMarks } from "./stepMarks.ts";
import { RAIL_CLEAR_MM, referenceLines } from "./stepSize.ts";
import type { Placed, PlacedColumn } from "./stretchedLevels.ts";

const JOINT_DOT_MM = 1;
const lead = { widthMm: LINE_MM.symbol, colour: "ink" } as const;

const dot = (xMm: number, yMm: number): Mark => ({
  kind: "circle",
  centre: point(xMm, yMm),
  radiusMm: JOINT_DOT_MM,
  fill: "ink",
});

/** What leads away from a joint: columns told in words, and whether one is drawn across. */
export interface JointWays {
  readonly told: readonly number[];
  readonly isDrawnAcross: boolean;
}

/** One current path down its line. `neighbourXMm` is the line of the column at its left, for what is drawn across. */
export function columnMarks(
  column: CircuitColumn,
  placed: PlacedColumn,
  xMm: number,
  neighbourXMm: number | null,
  waysAt: (joint: string) => JointWays,
): Mark[] {
  const steps = column.steps.flatMap((step, i) => {
    const place = placed.steps[i]!;
    const next = placed.steps[i + 1] ?? placed.end;
    return [...stepMarks(step, xMm, place, waysAt), ...leadMark(xMm, place.bottomMm, next.topMm)];
  });
  return [
    ...startMarks(column.start, placed.start, xMm, neighbourXMm),
    ...steps,
    ...endMarks(column.end, placed.end, xMm, neighbourXMm),
  ];
}

function stepMarks(
  step: CircuitStep,
  xMm: number,
  place: Placed,
  waysAt: (joint: string) => JointWays,
): Mark[] {
  switch (step.kind) {
    case "wire":
      return wireStepMarks(step, xMm, place);
    case "part":
      return partStepMarks(step, xMm, place);
    case "connector":
      return connectorStepMarks(step, xMm, place);
    case "joint": {
      const middleMm = (place.topMm + place.bottomMm) / 2;
      const name = { ...TEXT_STYLE.fine, colour: "ink", weight: 700 } as const;
      const marks: Mark[] = [
        ...leadMark(xMm, place.topMm, place.bottomMm),
        dot(xMm, middleMm),
        step.side === "right"
          ? textMark(step.name, xMm + 2, middleMm + CAP_MM.fine / 2, name)
          : textMark(step.name, xMm - 2, middleMm + CAP_MM.fine / 2, name, "end"),
        ...jointNote(waysAt(step.id), xMm, middleMm),
      ];
      const of = step.of ?? "joint";
      return [{ kind: "group", id: step.id, of, name: `joint ${step.name}`, marks }];
    }
  }
}

export const jointNoteText = (numbers: readonly number[]): string =>
  `column${numbers.length > 1 ? "s" : ""} ${numbers.join(", ")}`;

/** From the line to the words of a joint. */
export const JOINT_NOTE_FROM_MM = 8.5;

/** A short arrow to the right and the columns it leads to; where a line is drawn across, the words stand on it. */
function jointNote({ told, isDrawnAcross }: JointWays, xMm: number, yMm: number): Mark[] {
  if (told.length === 0) return [];
  const words = jointNoteText(told);
  const textXMm = xMm + JOINT_NOTE_FROM_MM;
  if (isDrawnAcross) return [textMark(words, textXMm, yMm - 1.2, TEXT_STYLE.text)];
  return [
    { kind: "line", from: point(xMm, yMm), to: point(xMm + 6, yMm), stroke: lead },
    arrowHead(xMm + 7, yMm, 1, 0),
    textMark(words, textXMm, yMm + CAP_MM.text / 2, TEXT_STYLE.text),
  ];
}

/** A filled arrow head with its tip at a point, along a direction. */
const arrowHead = (xMm: number, yMm: number, alongX: number, alongY: number): Mark => ({
  kind: "polyline",
  closed: true,
  points: [
    point(xMm, yMm),
    point(xMm - 2 * alongX - 0.8 * alongY, yMm - 2 * alongY - 0.8 * alongX),
    point(xMm - 2 * alongX + 0.8 * alongY, yMm - 2 * alongY + 0.8 * alongX),
  ],
  fill: "ink",
});

const across = (fromXMm: number, toXMm: number, yMm: number): Mark => ({
  kind: "line",
  from: point(fromXMm, yMm),
  to: point(toXMm, yMm),
  stroke: { ...lead, cap: "round" },
});

function startMarks(
  start: ColumnStart,
  place: Placed,
  xMm: number,
  neighbourXMm: number | null,
): Mark[] {
  if (start.kind === "reference") return referenceMarks(start.label, xMm, place, "from");
  const line = leadMark(xMm, place.topMm, place.bottomMm);
  if (start.kind === "feed") return [dot(xMm, place.topMm), ...line];
  return [across(neighbourXMm!, xMm, place.topMm), ...line];
}

function endMarks(end: ColumnEnd, place: Placed, xMm: number, neighbourXMm: number | null): Mark[] {
  switch (end.kind) {
    case "reference":
      return referenceMarks(end.label, xMm, place, "to");
    case "earth":
      return [...leadMark(xMm, place.topMm, place.bottomMm), dot(xMm, place.bottomMm)];
    case "join":
      return [
        ...leadMark(xMm, place.topMm, place.bottomMm),
        across(neighbourXMm!, xMm, place.bottomMm),
      ];
    case "frame":
      return frameMarks(end.label, xMm, place);
  }
}

function frameMarks(label: string, xMm: number, place: Placed): Mark[] {
  const combMm = Math.max(place.topMm + 2, place.bottomMm - RAIL_CLEAR_MM - 4);
  const comb = [-3.25, 0, 3.25].map(
    (dxMm): Mark => ({
      kind: "line",
      from: point(xMm + dxMm, combMm),
      to: point(xMm + dxMm - 1.5, combMm + 2.5),
      stroke: lead,
    }),
  );
  return [
    ...leadMark(xMm, place.topMm, combMm),
    across(xMm - 3.75, xMm + 3.75, combMm),
    ...comb,
    ...referenceLines(label).map((line, i) =>
      textMark(line, xMm + 4.75, combMm + 1.2 + i * 4.2, TEXT_STYLE.text),
    ),
  ];
}

/** An arrow head on the line and words at its right; clear of the rail, to which it does not belong. */
function referenceMarks(label: string, xMm: number, place: Placed, way: "from" | "to"): Mark[] {
  const lines = referenceLines(label);
  const topMm = way === "from" ? place.topMm + RAIL_CLEAR_MM : place.topMm;
  const tipMm = topMm + 3.5;
  return [
    ...leadMark(xMm, topMm, way === "from" ? place.bottomMm : tipMm - 1),
    arrowHead(xMm, tipMm, 0, 1),
    ...lines.map((line, i) => textMark(line, xMm + 3.5, topMm + 3 + i * 4.2, TEXT_STYLE.text)),
  ];
}
