import { LINE_MM, type Mark, point, wrapText } from "../../drawing/index.ts";
import type { DiagramLayout } from "../../layout/index.ts";
import type { PaperInput } from "../paperInput.ts";
import type { LetteredItem } from "./diagramItems.ts";
import { DIAGRAM_CAP_MM, lettered } from "./diagramLettering.ts";
import { textMark } from "./itemMarks.ts";

/** Under the feet of the paths: column numbers, and the places of what they feed. */
export const FOOT_MM = 40;
const PLACE_MM = 30;
const PLACE_PITCH_MM = 3.7;

/** A rule, the number of every column, and under it the place of the last part in it. */
export function columnFeet(
  { job }: PaperInput,
  { columnXsMm, segments }: DiagramLayout,
  behind: readonly LetteredItem[],
  topMm: number,
): Mark[] {
  const stations = new Map(job.stations.map(({ id, name }) => [id, name]));
  const placeOf = (column: number): string => {
    const parts = segments
      .filter((one) => one.column === column)
      .sort((a, b) => a.topMm - b.topMm)
      .flatMap(({ segment }) => segment.items)
      .flatMap(({ ref }) => {
        const { step } = behind[ref]!;
        return step.kind === "part" ? [step.link.part!.station ?? ""] : [];
      });
    return stations.get(parts.at(-1) ?? "") ?? "";
  };
  const ruleMm = topMm + 1.5;
  const [first, last] = [columnXsMm[0] ?? 0, columnXsMm.at(-1) ?? 0];
  return [
    {
      kind: "line",
      from: point(first - 3, ruleMm),
      to: point(last + 3, ruleMm),
      stroke: { widthMm: LINE_MM.detail, colour: "rule" },
    },
    ...columnXsMm.flatMap((xMm, i) => [
      textMark(lettered(String(i + 1), 3.6, 700), xMm, ruleMm + 5, "middle"),
      ...placeMarks(placeOf(i), xMm, ruleMm + 7.2),
    ]),
  ];
}

/** A place, along the column, in two lines at most. */
function placeMarks(place: string, xMm: number, topMm: number): Mark[] {
  if (place === "") return [];
  const lines = wrapText(place, PLACE_MM, DIAGRAM_CAP_MM.text, 400).slice(0, 2);
  const firstMm = xMm + DIAGRAM_CAP_MM.text / 2 - ((lines.length - 1) * PLACE_PITCH_MM) / 2;
  return lines.map((line, i): Mark => {
    const mark = textMark(lettered(line), firstMm + i * PLACE_PITCH_MM, topMm, "end");
    return { ...mark, turnDeg: -90 } as Mark;
  });
}
