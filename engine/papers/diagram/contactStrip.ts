import { contactTable, type Mark, moveMarks } from "../../drawing/index.ts";
import { contactsOf } from "../circuit/circuitInput.ts";
import type { PaperInput } from "../paperInput.ts";
import { DIAGRAM_CAP_MM, lettered, linesWidthMm } from "./diagramLettering.ts";
import { textMark } from "./itemMarks.ts";

const GAP_MM = 6;
const NAME_MM = 5;

export interface ContactStrip {
  readonly marks: readonly Mark[];
  readonly heightMm: number;
}

/** The contact table of every switch, once, with the columns its contacts stand in; in rows as wide as the drawing. */
export function contactStrip(
  { job }: PaperInput,
  columnsOfPart: ReadonlyMap<string, readonly number[]>,
  widthMm: number,
): ContactStrip {
  const marks: Mark[] = [];
  let [xMm, yMm, rowMm] = [0, GAP_MM / 2, 0];
  for (const part of job.parts) {
    if (part.kind !== "switch") continue;
    const table = contactTable(contactsOf(part));
    const columns = columnsOfPart.get(part.id) ?? [];
    const where =
      columns.length === 0 ? "" : `column${columns.length > 1 ? "s" : ""} ${columns.join(", ")}`;
    const name = lettered(part.id, DIAGRAM_CAP_MM.text, 700);
    const place = lettered(where);
    const nameMm = linesWidthMm([name]);
    const reservedMm = nameMm + 2 + linesWidthMm([lettered("columns 88, 88, 88")]);
    const neededMm = Math.max(table.widthMm, reservedMm);
    if (xMm > 0 && xMm + neededMm > widthMm) {
      xMm = 0;
      yMm += rowMm + GAP_MM / 2;
      rowMm = 0;
    }
    marks.push({
      kind: "group",
      id: part.id,
      of: "part",
      name: `contacts of ${part.name}`,
      marks: [
        textMark(name, xMm, yMm + 3),
        textMark(place, xMm + nameMm + 2, yMm + 3),
        ...moveMarks(table.marks, xMm, yMm + NAME_MM),
      ],
    });
    xMm += neededMm + GAP_MM;
    rowMm = Math.max(rowMm, NAME_MM + table.heightMm);
  }
  return { marks, heightMm: marks.length === 0 ? 0 : yMm + rowMm };
}
