import { type Sheet, sheetRoom, type TableRow } from "../../drawing/index.ts";
import { sideView } from "../../layout/index.ts";
import { printNumber } from "../../units/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { partWords } from "../partNote.ts";
import { tableSheets } from "../sheets.ts";
import { compareNumbers } from "../wireRows.ts";
import { locationDrawing } from "./locationDrawing.ts";
import { type StationThings, stationThings } from "./stationThings.ts";

/** Where everything sits: the machine from its left side, and the same as a list. Nothing where no station has a place. */
export function locationPaper(input: PaperInput, name: string): PackPaper {
  const view = sideView(input.job);
  const title = "Location view";
  if (view === null) return { name, title, sheets: [], rows: null, drawings: null };
  const things = stationThings(input.job, view);
  const paper = { size: input.paper, orientation: "landscape" } as const;
  const head = {
    title,
    lead: "Seen from the left, front left, not to scale. Rings: stations, front to rear; dots: joints along a run; two bars: a run that moves; broken: not measured.",
  };
  const { content } = sheetRoom(paper, input.info, head);
  const picture: Sheet = {
    paper,
    documentName: "location view",
    head,
    bookmark: [title],
    marks: locationDrawing(view, things, content),
  };
  return {
    name,
    title,
    sheets: [picture, ...listSheets(input, things)],
    rows: [
      ["station", "name", "order", "parts", "joints", "connectors", "earths"],
      ...things.map((one) => [
        one.id,
        one.name,
        one.orderCount === 0 ? "" : one.orderCount,
        one.parts.map(({ id }) => id).join(" "),
        one.joints.join(" "),
        one.connectors.join(" "),
        one.earths.join(" "),
      ]),
    ],
    drawings: null,
    plots: undefined,
  };
}

function listSheets(input: PaperInput, things: readonly StationThings[]): readonly Sheet[] {
  const { job } = input;
  const onRuns = job.joints
    .filter(({ offset, status }) => offset !== undefined && status !== "remove")
    .sort((p, q) => compareNumbers(p.id, q.id))
    .map((joint): TableRow => {
      const run = job.runs.find(({ id }) => id === joint.offset!.run)!;
      const stationName = (id: string) => job.stations.find((one) => one.id === id)?.name ?? id;
      const mm = printNumber(joint.offset!.mm.value, 0);
      return {
        id: joint.id,
        cells: {
          what: { kind: "text", text: joint.id, weight: 700 },
          name: joint.name ?? "joint",
          note: `${mm} mm from ${stationName(run.from)} towards ${stationName(run.to)}`,
        },
      };
    });
  return tableSheets(
    input,
    {
      documentName: "location list",
      orientation: "portrait",
      head: { title: "Where everything sits", lead: "Numbers as in the view, front to rear." },
    },
    {
      columns: [
        { key: "what", heading: "What", width: { kind: "natural", maxMm: 30 } },
        { key: "name", heading: "Name", width: { kind: "share", share: 1, minMm: 50 } },
        {
          key: "note",
          heading: "Kind, or place along the loom",
          width: { kind: "share", share: 1, minMm: 50 },
        },
      ],
      groups: [
        ...things
          .map((one) => ({
            heading: `${one.orderCount === 0 ? "not placed" : one.orderCount}  ${one.name}`,
            rows: rowsOf(input, one),
          }))
          .filter(({ rows }) => rows.length > 0),
        ...(onRuns.length === 0 ? [] : [{ heading: "Joints along the loom", rows: onRuns }]),
      ],
    },
  );
}

function rowsOf({ job }: PaperInput, one: StationThings): readonly TableRow[] {
  const row = (id: string, name: string, note: string): TableRow => ({
    id,
    cells: { what: { kind: "text", text: id, weight: 700 }, name, note },
  });
  return [
    ...one.parts.map((part) => row(part.id, partWords(part), part.kind)),
    ...one.connectors.map((id) =>
      row(id, job.connectors.find((each) => each.id === id)!.name, "connector"),
    ),
    ...one.joints.map((id) =>
      row(id, job.joints.find((each) => each.id === id)!.name ?? "", "joint"),
    ),
    ...one.earths.map((ref) => {
      const body = job.bodies.find(({ id }) => id === ref.slice(0, ref.indexOf(".")))!;
      return row(ref, body.name, "earth point");
    }),
  ];
}
