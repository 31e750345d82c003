import {
  type Block,
  bulletBlocks,
  headingBlock,
  keyValueBlocks,
  LINE_MM,
  type Mark,
  paragraphBlocks,
  point,
  type Sheet,
  TEXT_STYLE,
  textMark,
  verdictStamp,
} from "../../drawing/index.ts";
import type { ProveResult } from "../../prove/index.ts";
import { printNumber } from "../../units/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";

const MEANINGS = {
  fit: "Proven: no position of the switches lights what it should not, and no single short behind a fuse burns a wire.",
  mend: "Put the findings below right before the loom is used.",
  stop: "A single fault can burn this loom. Do not connect the battery.",
  "not-proven": "A safety question rests on a figure nobody has confirmed.",
} as const;

const ORDER = ["stop", "not-proven", "mend"] as const;

const DECISIONS: Readonly<Record<string, string>> = {
  "0010": "states told by groups of switches that act on each other",
  "0011": "open places in series, or carrying nothing",
  "0012": "wires settled for every short at once, by the bound over every current",
  "0013": "shorts screened, every 499th solved in full",
};

/** Never on more than this one page: of the open findings as many as there is room for, the number of the others told. */
const MOST_FINDINGS = 12;

/** One page somebody can sign: verdict, what was covered, what is open, what no proof covers, and lines for name, date and signature. */
export function signSheet(input: PaperInput, proof: ProveResult): readonly Sheet[] {
  for (let shownCount = MOST_FINDINGS; ; shownCount--) {
    const plan = {
      documentName: "proof",
      orientation: "portrait" as const,
      head: { title: "Proof", lead: MEANINGS[proof.verdict] },
    };
    const sheets = blockSheets(input, plan, ({ widthMm }) => [
      stampBlock(proof, widthMm),
      ...headingBlock("What was covered", widthMm, 2),
      ...keyValueBlocks(coverage(proof), widthMm, 34),
      ...openFindings(proof, shownCount, widthMm),
      ...headingBlock("What this proof does not say", widthMm, 2),
      ...bulletBlocks(cautions(proof), widthMm),
      signatureBlock(widthMm),
    ]);
    if (sheets.length === 1 || shownCount === 0) return sheets;
  }
}

function stampBlock({ verdict, findings }: ProveResult, widthMm: number): Block {
  const word = verdict === "not-proven" ? "not proven" : verdict;
  const open = findings.filter(({ severity }) => severity !== "advise").length;
  const note = open === 0 ? "no open finding" : `${open} open findings`;
  const beside = [
    "The verdict of the proof. The stamp at the foot of each sheet is that of the check,",
    "which asks other questions: whether everything works, fits and is worth its copper.",
  ];
  return {
    heightMm: 17,
    gapAfterMm: 1,
    marks: [
      ...verdictStamp(word, note, { xMm: 0, yMm: 0, widthMm: 46, heightMm: 16 }),
      ...beside.map((text, k) =>
        textMark(text, Math.min(50, widthMm), 7 + 5 * k, { ...TEXT_STYLE.fine, capHeightMm: 2.1 }),
      ),
    ],
  };
}

const count = (value: number): string => printNumber(value, 0);

function coverage({ coverage: c, tolerance }: ProveResult): (readonly [string, string])[] {
  const removed = c.reductions
    .filter(({ decision }) => decision !== "0012")
    .map(
      ({ decision, removedCount }) =>
        `${decision}: ${count(removedCount)} ${DECISIONS[decision] ?? ""}`,
    );
  return [
    [
      "Full product",
      `${count(c.productCount)} states of ${c.switches.length} switches, flasher and engine; excluded by what cannot be together: ${count(c.excluded.reduce((sum, one) => sum + one.count, 0))}`,
    ],
    [
      "Groups",
      `${c.groups.length} ${c.groups.length === 1 ? "group" : "groups"} of switches, ${count(c.statesSolved)} combinations, each solved with all else drawing least and most`,
    ],
    ["Places opened", `${count(c.opens)}, one at a time`],
    [
      "Shorts",
      `${count(c.shortsToEarth)} to earth, ${count(c.shortsToNeighbour)} to neighbours, ${c.resistancesPerShort} resistances each: ${count(c.faultStatesCovered)} faults in states`,
    ],
    ["Left out", removed.join("; ")],
    [
      "Solved in full",
      `${count(c.solvedInFull)}, ${count(c.relayTwiceSettled)} with relays settled from both sides; screened ${count(c.screened)}`,
    ],
    [
      "Exactness",
      `largest current left over ${c.largestKclResidualA.toExponential(1)} A; largest screening error to earth ${c.largestScreenErrorPercent.toPrecision(2)} %`,
    ],
    [
      "Tolerance",
      `${tolerance.worstMargin === null ? "no margin known" : `${printNumber(tolerance.worstMargin, 0)} K left in the hot corner of the bands`}; changes there: ${tolerance.verdictChanges.length === 0 ? "nothing" : `${tolerance.verdictChanges.length}, listed further on`}`,
    ],
  ];
}

function openFindings(
  { findings }: ProveResult,
  shownCount: number,
  widthMm: number,
): readonly Block[] {
  const open = ORDER.flatMap((severity) => findings.filter((one) => one.severity === severity));
  const heading = headingBlock("Open findings", widthMm, 2);
  if (open.length === 0) return [...heading, ...paragraphBlocks("None.", widthMm)];
  const rows = open.slice(0, shownCount).map(({ severity, subject, message }): [string, string] => {
    const [first = ""] = message.split(/(?<=[.:])\s/);
    return [
      `${severity === "not-proven" ? "not proven" : severity}  ${subject.id}`,
      first.replace(/[.:]$/, ""),
    ];
  });
  const left = open.length - rows.length;
  return [
    ...heading,
    ...keyValueBlocks(rows, widthMm, 34),
    ...(left > 0 ? paragraphBlocks(`${left} more on the sheets that follow.`, widthMm) : []),
  ];
}

function cautions({ findings }: ProveResult): readonly string[] {
  const bare = findings
    .filter(({ code }) => code === "proof-lead-unfused" || code === "proof-starter-cable-unfused")
    .map(({ subject }) => subject.id);
  return [
    ...(bare.length === 0
      ? []
      : [
          `No fuse guards ${bare.join(", ")}: they stand on being short, sleeved and clipped clear of edges. Look at them every year.`,
        ]),
    "It holds for the machine as written in the job: the fuses named, the copper named, the lengths as measured or estimated. Another fuse is another machine.",
    "One fault at a time. Two at once, a crimp that burns by itself, water, and work done badly are not covered.",
    "Times of fuses are the published ones of their kind, temperatures those of a model of wires in bundles in the air stated.",
    "Whoever signs has read the sheets that follow.",
  ];
}

const SIGN_MM = 21;

function signatureBlock(widthMm: number): Block {
  const parts = [
    { text: "Name", fromMm: 0, toMm: widthMm * 0.38 },
    { text: "Date", fromMm: widthMm * 0.42, toMm: widthMm * 0.6 },
    { text: "Signature", fromMm: widthMm * 0.64, toMm: widthMm },
  ];
  const marks = parts.flatMap(({ text, fromMm, toMm }): Mark[] => [
    {
      kind: "line",
      from: point(fromMm, SIGN_MM - 6),
      to: point(toMm, SIGN_MM - 6),
      stroke: { widthMm: LINE_MM.detail, colour: "ink" },
    },
    textMark(text, fromMm, SIGN_MM - 2, TEXT_STYLE.fine),
  ]);
  return { heightMm: SIGN_MM, marks };
}
