import { type Block, flowBlocks } from "./block.ts";
import type { Sheet } from "./framedDocument.ts";
import { layoutTable } from "./layoutTable.ts";
import { measureSquare, scaleBar } from "./measureMarks.ts";
import type { Paper } from "./paperSize.ts";
import { area, type Mark, point } from "./scene.ts";
import { severityTag } from "./severityTag.ts";
import { type SheetHead, sheetRoom } from "./sheetFrame.ts";
import type { SheetInfo } from "./sheetInfo.ts";
import { SYMBOL_NAMES } from "./symbolName.ts";
import type { Table, TableRow } from "./table.ts";
import {
  bulletBlocks,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
  TEXT_STYLE,
  textMark,
} from "./textBlock.ts";
import { verdictStamp } from "./verdictStamp.ts";
import { WIRE_COLOUR_VALUES } from "./wireColour.ts";

/** An invented machine, for looking at sheets and testing them. */
export const sampleInfo: SheetInfo = {
  machine: "Marlow 650 twin, 1958",
  jobId: "0417",
  jobName: "Rewire on the twelve-volt conversion",
  revision: "23",
  date: "2026-11-25",
  nominalV: 12,
  earthPolarity: "positive",
  verdict: "mend",
  verdictNote: "2 to mend, 3 to know",
};

const portrait: Paper = { size: "a4", orientation: "portrait" };
const landscape: Paper = { size: "a4", orientation: "landscape" };

const colourWords = Object.keys(WIRE_COLOUR_VALUES);
const places = [
  "Headlamp shell, 6-way plug",
  "Dip switch on the left bar",
  "Tail lamp under the rear guard",
  "Ignition switch",
  "Rectifier behind the battery tray",
];

function sampleRow(i: number): TableRow {
  const main = colourWords[i % colourWords.length]!;
  const tracer = i % 3 === 0 ? undefined : colourWords[(i * 7 + 1) % colourWords.length]!;
  const areaMm2 = [0.5, 1, 2, 4, 16][i % 5]!;
  return {
    id: `W${i + 1}`,
    cells: {
      number: { kind: "wireNumber", text: String(i + 1) },
      colour: {
        kind: "wire",
        colours: { main, tracer },
        areaMm2,
        code: tracer
          ? `${main[0]!.toUpperCase()}/${tracer[0]!.toUpperCase()}`
          : main[0]!.toUpperCase(),
        word: tracer ? `${main}, ${tracer}` : main,
      },
      area: { kind: "text", text: `${areaMm2} mm²`, note: `${10 + i}/0.30` },
      from: {
        kind: "text",
        text: places[i % 5]!,
        note: `X${1 + (i % 4)} cavity ${1 + (i % 6)}, 6.3 blade`,
      },
      to: { kind: "text", text: places[(i + 2) % 5]!, note: `pin ${1 + (i % 3)}` },
      cut: `${300 + i * 17}`,
      done: { kind: "tick", done: i % 4 === 0 },
      tested: { kind: "tick" },
    },
  };
}

export const sampleTable: Table = {
  columns: [
    { key: "number", heading: "No.", width: { kind: "natural", maxMm: 22 }, align: "end" },
    { key: "colour", heading: "Colour", width: { kind: "fixed", mm: 36 } },
    { key: "area", heading: "Size", width: { kind: "natural", maxMm: 20 } },
    { key: "from", heading: "From", width: { kind: "share", share: 1, minMm: 25 } },
    { key: "to", heading: "To", width: { kind: "share", share: 1, minMm: 25 } },
    {
      key: "cut",
      heading: "Cut mm",
      width: { kind: "natural", maxMm: 16 },
      align: "end",
      weight: 700,
    },
    { key: "done", heading: "cut", width: { kind: "fixed", mm: 10 }, align: "middle" },
    { key: "tested", heading: "ok", width: { kind: "fixed", mm: 10 }, align: "middle" },
  ],
  groups: [
    {
      heading: "Lighting",
      headingNote: "21 wires, 14.3 m",
      rows: Array.from({ length: 21 }, (_, i) => sampleRow(i)),
    },
    {
      heading: "Ignition and charging",
      rows: Array.from({ length: 14 }, (_, i) => sampleRow(i + 21)),
    },
  ],
};

export function tableSheets(): Sheet[] {
  const head: SheetHead = { title: "Wire list", lead: "Tick each wire when cut and when tested." };
  const room = sheetRoom(portrait, sampleInfo, head);
  return layoutTable(sampleTable, room.content).map(({ marks }, i) => ({
    paper: portrait,
    documentName: "wire list",
    head,
    bookmark: ["Wire list", `sheet ${i + 1}`],
    marks,
  }));
}

function proseBlocks(widthMm: number): Block[] {
  return [
    ...headingBlock("What is fitted", widthMm),
    ...keyValueBlocks(
      [
        ["Battery", "12 V, 9 Ah, sealed; positive post to the frame"],
        ["Drop, battery to lamp and back", "0.27 V = 3.75 A × 71.4 mΩ, limit ≤ 0.50 V ✓"],
        ["Мастер", "Łukasz Żółć, Ωmega √2 → ∞"],
      ],
      widthMm,
    ),
    ...headingBlock("What not to do", widthMm),
    ...bulletBlocks(
      [
        "Do not start the engine from a running car: its alternator holds more than this machine's regulator can stand.",
        "Do not take the battery off while the engine runs.",
        "Do not fit a larger fuse than the lid says.",
      ],
      widthMm,
    ),
    ...headingBlock("Why the main fuse is 20 A", widthMm, 2),
    ...paragraphBlocks(
      "The thinnest wire behind it carries 20 A for as long as you like before its insulation softens; the whole machine takes 14.2 A with everything on.",
      widthMm,
    ),
  ];
}

export function proseSheet(): Sheet {
  const head: SheetHead = { title: "Hand-over sheet", lead: "Keep under the seat." };
  const { content } = sheetRoom(portrait, sampleInfo, head);
  const { xMm } = content;
  const flowed = flowBlocks(proseBlocks(content.widthMm), content)[0]!;
  const yMm = flowed.endYMm + 8;
  const marks = [
    ...flowed.marks,
    ...(["fit", "mend", "stop", "not proven"] as const).flatMap((verdict, i) =>
      verdictStamp(verdict, "since revision 21", area(xMm + i * 43, yMm, 40, 17)),
    ),
    ...(["stop", "mend", "advise", "not-proven"] as const).flatMap((severity, i) =>
      severityTag(severity, point(xMm + i * 30, yMm + 24)),
    ),
    ...scaleBar(point(xMm, yMm + 40)),
    ...measureSquare(point(xMm + 120, yMm + 36)),
  ];
  return { paper: portrait, documentName: "hand-over", head, bookmark: ["Hand-over"], marks };
}

/** Every symbol on its grid. */
export function symbolSheet(): Sheet {
  const head: SheetHead = {
    title: "Symbols",
    lead: "Grid 2.5 mm. Feed above, return below. All at rest.",
  };
  const { content } = sheetRoom(landscape, sampleInfo, head);
  const marks = SYMBOL_NAMES.flatMap((symbol, i): Mark[] => {
    const at = point(
      Math.round((content.xMm + 12) / 2.5) * 2.5 + (i % 10) * 25,
      Math.round((content.yMm + 12) / 2.5) * 2.5 + Math.floor(i / 10) * 30,
    );
    const dots = Array.from(
      { length: 49 },
      (_, k): Mark => ({
        kind: "circle",
        centre: point(at.xMm + ((k % 7) - 3) * 2.5, at.yMm + (Math.floor(k / 7) - 3) * 2.5),
        radiusMm: 0.12,
        fill: "rule",
      }),
    );
    return [
      ...dots,
      { kind: "symbol", symbol, at, id: symbol },
      textMark(symbol, at.xMm, at.yMm + 12, { ...TEXT_STYLE.fine, colour: "ink" }, "middle"),
    ];
  });
  return { paper: landscape, documentName: "symbols", head, bookmark: ["Symbols"], marks };
}
