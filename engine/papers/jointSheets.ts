import type { CsvValue, Sheet, TableRow } from "../drawing/index.ts";
import type { Joint, Wire } from "../job/index.ts";
import { printNumber } from "../units/index.ts";
import { colourCode, lettersName } from "./colourText.ts";
import type { PaperInput } from "./paperInput.ts";
import { tableSheets } from "./sheets.ts";
import { compareNumbers, numberOf } from "./wireRows.ts";

const KINDS: Readonly<Record<Joint["kind"], string>> = {
  "crimped-splice": "crimped splice",
  "multiway-bullet": "bullets in a sleeve",
  "ring-stack": "rings on one stud",
  bus: "bus bar",
  soldered: "soldered",
  twisted: "twisted",
};

/** Joint by joint: what goes in, how much copper each side, where it sits, and that the sleeve goes on first. */
export function jointSheets(input: PaperInput): readonly Sheet[] {
  const { job } = input;
  const joints = job.joints.filter((joint) => joint.status !== "remove");
  if (joints.length === 0) return [];
  const rows = [...joints]
    .sort((left, right) => compareNumbers(left.id, right.id))
    .map((joint) => rowOf(input, joint));
  return tableSheets(
    input,
    {
      documentName: "joint list",
      orientation: "landscape",
      head: {
        title: "Joint list",
        lead: `Sleeve on first, then crimp. Colours in ${lettersName(job.colours.letters)}.`,
      },
    },
    {
      columns: [
        { key: "joint", heading: "Joint", width: { kind: "natural", maxMm: 34 } },
        { key: "kind", heading: "Kind", width: { kind: "natural", maxMm: 34 } },
        {
          key: "wires",
          heading: "Wires in and out",
          width: { kind: "share", share: 1.4, minMm: 60 },
        },
        { key: "copper", heading: "Copper", width: { kind: "natural", maxMm: 26 }, align: "end" },
        { key: "place", heading: "Where", width: { kind: "share", share: 1, minMm: 40 } },
        { key: "sleeve", heading: "sleeve on", width: { kind: "fixed", mm: 15 }, align: "middle" },
        { key: "done", heading: "done", width: { kind: "fixed", mm: 11 }, align: "middle" },
      ],
      groups: [{ heading: null, rows }],
    },
  );
}

function rowOf(input: PaperInput, joint: Joint): TableRow {
  const { job, design } = input;
  const ways = wiresOf(input, joint);
  const areaMm2 = ways.reduce(
    (sum, wire) => sum + (design.conductors.get(wire.id)?.areaMm2 ?? 0),
    0,
  );
  const name = (wire: Wire) =>
    `${numberOf(wire)} ${colourCode(wire.colour, job.colours.letters)} ${printNumber(design.conductors.get(wire.id)?.areaMm2 ?? 0, 1)}`;
  return {
    id: joint.id,
    cells: {
      joint: { kind: "text", text: joint.id, weight: 700, note: joint.name ?? "" },
      kind: KINDS[joint.kind],
      wires: ways.map(name).join(",  "),
      copper: `${printNumber(areaMm2, 1)} mm²`,
      place: placeOf(input, joint),
      sleeve: { kind: "tick" },
      done: { kind: "tick" },
    },
  };
}

function placeOf({ job }: PaperInput, joint: Joint): string {
  const station = (id: string) => job.stations.find((one) => one.id === id)?.name ?? id;
  if (joint.offset) {
    const run = job.runs.find((one) => one.id === joint.offset!.run);
    return `${printNumber(joint.offset.mm.value, 0)} mm from ${station(run?.from ?? "")} towards ${station(run?.to ?? "")}`;
  }
  return joint.station === undefined ? "place not given" : `at ${station(joint.station)}`;
}

/** The same joints for a spreadsheet. */
export function jointRows(input: PaperInput): readonly (readonly CsvValue[])[] {
  const { job, design } = input;
  return [
    ["joint", "name", "kind", "status", "wires", "copperMm2", "place"],
    ...[...job.joints]
      .sort((left, right) => compareNumbers(left.id, right.id))
      .map((joint) => {
        const wires = wiresOf(input, joint);
        return [
          joint.id,
          joint.name ?? "",
          joint.kind,
          joint.status ?? "keep",
          wires.map(numberOf).join(" "),
          wires.reduce((sum, { id }) => sum + (design.conductors.get(id)?.areaMm2 ?? 0), 0),
          placeOf(input, joint),
        ];
      }),
  ];
}

const wiresOf = ({ design }: PaperInput, joint: Joint): readonly Wire[] =>
  joint.ways.flatMap((way) => design.wiresAt.get(`${joint.id}.${way}`) ?? []);
