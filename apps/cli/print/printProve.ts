import type { Job, ProveResult } from "@copperwright/engine";
import { printNumber, printQuantity } from "@copperwright/engine";
import { printTable } from "../printTable.ts";
import { wrapText } from "../wrapText.ts";

const ORDER = ["stop", "not-proven", "mend", "advise"] as const;
const VERDICTS = {
  fit: "PROVEN: no state lights what it should not, and no short behind a fuse burns a wire.",
  mend: "MEND: put these right before it is used.",
  stop: "STOP: a single fault can burn this loom. Do not connect the battery.",
  "not-proven": "NOT PROVEN: a safety question rests on a figure nobody has confirmed.",
} as const;
const WIDTH_COUNT = 100;

/** What the verdict does not cover, said in the same breath. */
function unguardedOf({ findings }: ProveResult): string {
  const wires = findings
    .filter(({ code }) => code === "proof-lead-unfused" || code === "proof-starter-cable-unfused")
    .map(({ subject }) => subject.id);
  if (wires.length === 0) return "";
  const words = `No fuse guards ${wires.join(", ")}: they stand on being short, sleeved and clipped.`;
  return `\n${wrapText(words, WIDTH_COUNT)}`;
}

/** Verdict and what was covered, then findings worst first, then the truth table, fuses, and the wires with the least margin. */
export function printProve(job: Job, result: ProveResult): string {
  const findings = ORDER.flatMap((severity) =>
    result.findings.filter((finding) => finding.severity === severity),
  );
  const parts = [
    `${wrapText(`${job.name}, revision ${job.revision}`, WIDTH_COUNT)}\n\n${VERDICTS[result.verdict]}${unguardedOf(result)}`,
    printCoverage(result),
    ...findings.map(printFinding),
    `Which switches light what\n${printTruth(result)}`,
    `Which fuse opens first\n${printFuses(result)}`,
    `Wires with the least margin, over every current a fault can have\n${printWires(result)}`,
    `In normal use, nearest their ratings\n${printInUse(result)}`,
    printTolerance(result),
  ];
  return `${parts.join("\n\n")}\n`;
}

const count = (value: number): string => printNumber(value, 0);

function printCoverage({ coverage: c }: ProveResult): string {
  const lines = [
    `${count(c.productCount)} states of ${c.switches.length} switches, flasher and engine, in ${c.groups.length} ${c.groups.length === 1 ? "group" : "groups"}: ${count(c.statesSolved)} solved, each twice.`,
    `${count(c.opens)} places open one at a time; ${count(c.shortsToEarth + c.shortsToNeighbour)} shorts of ${c.resistancesPerShort} resistances: ${count(c.faultStatesCovered)} faults in states.`,
    `${count(c.solvedInFull)} solved in full, ${count(c.screened)} screened (to earth off by ${printNumber(c.largestScreenErrorPercent, 3)} % at most); largest leftover current ${c.largestKclResidualA.toExponential(1)} A.`,
  ];
  return lines.map((line) => wrapText(line, WIDTH_COUNT)).join("\n");
}

function printFinding(finding: ProveResult["findings"][number]): string {
  const again = finding.reproduce ? `See it: copperwright ${finding.reproduce.join(" ")}` : null;
  const remedies = finding.remedies.flatMap(({ message, cures }) =>
    message === undefined
      ? []
      : [`${cures === true ? "Tried, and it cures: " : "May help: "}${message}`],
  );
  const title = `${finding.severity}  ${finding.subject.id}  [${finding.code}]`;
  const lines = [finding.message, ...remedies, again].filter((line) => line !== null);
  return [title, ...lines.map((line) => wrapText(line, WIDTH_COUNT, "    "))].join("\n");
}

function printTruth({ truth }: ProveResult): string {
  const rows = truth.map(({ when, engine, lit }) => [
    Object.entries(when)
      .map(([part, positions]) => `${part}=${positions.join("|")}`)
      .join(" ") || "always",
    engine.length === 4 ? "any" : engine.join(" "),
    lit.join(" "),
  ]);
  return printTable(["when", "engine", "works"], rows, { widthCount: WIDTH_COUNT });
}

function printFuses({ fuses }: ProveResult): string {
  const rows = fuses.map(({ fuse, firstToOpenCount, overlapsWith, dies }) => [
    fuse,
    count(firstToOpenCount),
    overlapsWith.join(" ") || "none",
    dies.join(" "),
  ]);
  return printTable(["fuse", "first in", "not sure against", "stops with it"], rows, {
    right: [1],
  });
}

const MOST_WIRES_COUNT = 20;

function printWires({ wires }: ProveResult): string {
  const tight = wires
    .filter(({ bound }) => bound !== null)
    .sort((a, b) => a.margin! - b.margin! || (a.wire < b.wire ? -1 : 1))
    .slice(0, MOST_WIRES_COUNT);
  const rows = tight.map(({ wire, bound, margin, worst, verdict }) => [
    wire,
    worst?.cut.join(" ") || "none",
    printQuantity(bound!.currentA, "A"),
    bound!.timeS === null ? "for ever" : printQuantity(bound!.timeS, "s"),
    printQuantity(bound!.peakC, "C"),
    printQuantity(bound!.limitC, "C"),
    printQuantity(margin!, "K"),
    verdict,
  ]);
  return printTable(
    ["wire", "fuse", "current", "for", "peak", "limit", "margin", "verdict"],
    rows,
    {
      right: [2, 3, 4, 5, 6],
    },
  );
}

const MOST_PLACES_COUNT = 8;

function printInUse({ inUse: { contacts, cavities, fuses } }: ProveResult): string {
  const places = [
    ...[...contacts, ...cavities].map((one) => ({ ...one, ofA: one.ratingA })),
    ...fuses.map((one) => ({ ...one, place: one.fuse, ofA: one.carriesA })),
  ]
    .sort((a, b) => b.currentA / b.ofA - a.currentA / a.ofA || (a.place < b.place ? -1 : 1))
    .slice(0, MOST_PLACES_COUNT);
  const rows = places.map(({ place, currentA, ofA }) => [
    place,
    printQuantity(currentA, "A"),
    printQuantity(ofA, "A"),
    `${printNumber((100 * currentA) / ofA, 0)} %`,
  ]);
  return printTable(["place", "carries", "rated", "share"], rows, { right: [1, 2, 3] });
}

function printTolerance({ tolerance }: ProveResult): string {
  const margin =
    tolerance.worstMargin === null ? "none" : printQuantity(tolerance.worstMargin, "K");
  const changes = tolerance.verdictChanges.join(", ") || "nothing";
  return wrapText(
    `Tolerance, ${tolerance.method}. Least margin within the bands: ${margin}. What changes there: ${changes}.`,
    WIDTH_COUNT,
  );
}
