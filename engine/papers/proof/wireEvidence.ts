import {
  type AreaMm,
  type Block,
  headingBlock,
  paragraphBlocks,
  type TableCell,
  type TableColumn,
  type TableRow,
  tableBlocks,
} from "../../drawing/index.ts";
import type { ProvedWire, ProveResult } from "../../prove/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";
import { spell } from "./timeCurrentPlot.ts";

const natural = (key: string, heading: string, maxMm: number): TableColumn => ({
  key,
  heading,
  width: { kind: "natural", maxMm },
});
const figureColumn = (key: string, heading: string, maxMm: number): TableColumn => ({
  ...natural(key, heading, maxMm),
  align: "end",
});

const COLUMNS: readonly TableColumn[] = [
  natural("wire", "Wire", 26),
  natural("fuse", "Fuses before it", 28),
  figureColumn("current", "Worst, for", 22),
  figureColumn("peak", "Peak, limit", 22),
  figureColumn("margin", "Left", 16),
  { key: "short", heading: "Shown by", width: { kind: "share", share: 1, minMm: 32 } },
  natural("verdict", "Verdict", 22),
];

const WORDS: Readonly<Record<string, string>> = {
  saved: "saved",
  mend: "mend",
  stop: "stop",
  "not-proven": "not proven",
  unfused: "no fuse",
  "not-exposed": "not exposed",
};

/** Wire by wire: the hottest any fault can make it, over every current its fuses let by, and one short that shows it. */
export function wireEvidence(
  { job }: PaperInput,
  { wires }: ProveResult,
  { widthMm, heightMm }: AreaMm,
): readonly Block[] {
  const numbers = new Map(job.wires.map((wire) => [wire.id, numberOf(wire)]));
  const nameOf = (id: string): string => numbers.get(id) ?? id;
  const sorted = [...wires].sort((a, b) => compareNumbers(nameOf(a.wire), nameOf(b.wire)));
  const rows = sorted.map((one) => rowOf(one, nameOf(one.wire)));
  return [
    ...headingBlock("Wire by wire", widthMm).map((block, i) =>
      i === 0 ? { ...block, startsPage: true } : block,
    ),
    ...paragraphBlocks(
      "Worst is the current, of all a fault can have behind these fuses, that leaves the least margin; peak is a bound nothing surpasses. The short beside it was solved in full and can be solved again by the command in the JSON of the proof.",
      widthMm,
    ),
    ...tableBlocks({ columns: COLUMNS, groups: [{ heading: null, rows }] }, widthMm, heightMm),
  ];
}

function rowOf({ wire, worst, bound, margin, verdict, why }: ProvedWire, name: string): TableRow {
  const short =
    worst === null
      ? (why ?? "")
      : `${worst.place} to ${worst.to}, ${ohms(worst.ohm)}: ${printQuantity(worst.currentA, "A")}`;
  return {
    id: wire,
    cells: {
      wire: { kind: "text", text: name, weight: 700 },
      fuse: worst?.cut.join(" ") || (bound === null ? "" : "none"),
      current: bound === null ? "" : noted(printQuantity(bound.currentA, "A"), timeOf(bound.timeS)),
      peak:
        bound === null
          ? ""
          : noted(printQuantity(bound.peakC, "C"), `of ${printQuantity(bound.limitC, "C")}`),
      margin: margin === null ? "" : `${printNumber(margin, 0)} K`,
      short,
      verdict: WORDS[verdict] ?? verdict,
    },
  };
}

const noted = (text: string, note: string): TableCell => ({ kind: "text", text, note });

const timeOf = (timeS: number | null): string => (timeS === null ? "for ever" : spell(timeS));

const ohms = (ohm: number): string =>
  ohm < 0.0015 ? "dead" : `${printNumber(ohm, ohm < 0.1 ? 3 : ohm < 1 ? 2 : 1)} Ω`;
