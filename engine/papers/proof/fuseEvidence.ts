import {
  type AreaMm,
  type Block,
  headingBlock,
  keyValueBlocks,
  paragraphBlocks,
} from "../../drawing/index.ts";
import type { ProvedFuse, ProvedWire, ProveResult, TimeCurrent } from "../../prove/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { loadReader } from "../loadText.ts";
import type { PaperInput } from "../paperInput.ts";
import { compareNumbers } from "../wireRows.ts";
import { drawnWires, spell, timeCurrentPlot, wireLabel } from "./timeCurrentPlot.ts";

const PLOT_MM = 116;

/** Fuse by fuse: when it opens, what it guards, the weakest copper behind it, what it may be beaten by, what stops with it, and the plot. */
export function fuseEvidence(
  input: PaperInput,
  proof: ProveResult,
  plots: readonly TimeCurrent[],
  { widthMm }: AreaMm,
): readonly Block[] {
  const ordered = plots.toSorted((left, right) => compareNumbers(left.fuse, right.fuse));
  return ordered.flatMap((plot, k) => {
    const row = proof.fuses.find(({ fuse }) => fuse === plot.fuse);
    const heading = headingBlock(`${plot.fuse}: ${plot.name}`, widthMm);
    return [
      ...heading.map((block, i) => (i === 0 && k > 0 ? { ...block, startsPage: true } : block)),
      ...keyValueBlocks(factsOf(input, proof, plot, row), widthMm),
      {
        heightMm: PLOT_MM,
        gapBeforeMm: 2,
        gapAfterMm: 2,
        marks: timeCurrentPlot(plot, { xMm: 0, yMm: 0, widthMm, heightMm: PLOT_MM }),
      },
      ...paragraphBlocks(readingWords(plot), widthMm),
    ];
  });
}

function factsOf(
  { job }: PaperInput,
  proof: ProveResult,
  plot: TimeCurrent,
  row: ProvedFuse | undefined,
): (readonly [string, string])[] {
  const loads = loadReader(job);
  const fed = plot.wires.filter(({ onlyTouched }) => !onlyTouched);
  const guarded = fed.flatMap(({ wires }) => wires).sort();
  const touched = plot.wires.filter(({ onlyTouched }) => onlyTouched).flatMap(({ wires }) => wires);
  const behind = proof.wires.filter(({ worst }) => worst?.cut.join() === plot.fuse);
  const weakest = weakestOf(behind, [...guarded, ...touched]);
  const amps = (a: number | null): string => (a === null ? "not published" : printQuantity(a, "A"));
  const { carriesA, opensFromA, publishedToA } = plot.band;
  const facts: (readonly [string, string])[] = [
    [
      "Opens",
      `carries ${amps(carriesA)} for good, is sure to open from ${amps(opensFromA)}, published up to ${amps(publishedToA)}`,
    ],
    ["Guards alone", guarded.join(" ") || "nothing"],
    ["Weakest copper", weakest === null ? "none exposed" : weakestWords(weakest)],
  ];
  if (row !== undefined) {
    facts.push(
      ["Opens first in", `${printNumber(row.firstToOpenCount, 0)} of the shorts screened`],
      ["Not sure against", row.overlapsWith.join(" ") || "no other fuse"],
      ["Stops with it", row.dies.map(loads).join("; ") || "nothing by itself"],
    );
  }
  return facts;
}

function weakestOf(wires: readonly ProvedWire[], guarded: readonly string[]): ProvedWire | null {
  const own = new Set(guarded);
  return wires.reduce<ProvedWire | null>(
    (low, one) =>
      own.has(one.wire) && one.margin !== null && (low === null || one.margin < low.margin!)
        ? one
        : low,
    null,
  );
}

function weakestWords({ wire, bound, margin }: ProvedWire): string {
  const time = bound!.timeS === null ? "for ever" : `for ${spell(bound!.timeS)}`;
  const peak = printQuantity(bound!.peakC, "C");
  return `${wire}: at worst ${printQuantity(bound!.currentA, "A")} ${time}, ${peak} of ${printQuantity(bound!.limitC, "C")}, ${printNumber(margin!, 0)} K left`;
}

function readingWords(plot: TimeCurrent): string {
  const drawn = drawnWires(plot).map(wireLabel);
  const left = plot.wires.length - drawn.length;
  const danger = plot.danger.length === 0;
  return [
    danger
      ? "Nowhere does the slowest the fuse may be lie above the limit of a wire."
      : "Hatched: at these currents the fuse may take longer than the wire stands.",
    "The limit of a wire is the lowest of all wires of its make where they lie worst, their neighbours warm, less what a running generator adds past the fuse; steps in it are where the limit of a longer time begins.",
    plot.band.fastest.length === 0 ? "Nobody published the shortest time of this fuse." : "",
    left > 0 ? `${left} thicker or cooler makes lie above those drawn.` : "",
  ]
    .filter((words) => words !== "")
    .join(" ");
}
