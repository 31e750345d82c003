import {
  type AreaMm,
  type Block,
  headingBlock,
  paragraphBlocks,
  type TableColumn,
  type TableRow,
  tableBlocks,
} from "../../drawing/index.ts";
import type { ProveResult } from "../../prove/index.ts";
import { printNumber, printQuantity } from "../../units/index.ts";
import { loadReader } from "../loadText.ts";
import type { PaperInput } from "../paperInput.ts";

const share = (key: string, heading: string, shareRatio: number): TableColumn => ({
  key,
  heading,
  width: { kind: "share", share: shareRatio, minMm: 30 },
});
const natural = (key: string, heading: string, align: "start" | "end" = "start"): TableColumn => ({
  key,
  heading,
  width: { kind: "natural", maxMm: 34 },
  align,
});

const titled = (
  title: string,
  words: string,
  columns: readonly TableColumn[],
  rows: readonly TableRow[],
  { widthMm, heightMm }: AreaMm,
): readonly Block[] =>
  rows.length === 0
    ? []
    : [
        ...headingBlock(title, widthMm),
        ...paragraphBlocks(words, widthMm),
        ...tableBlocks({ columns, groups: [{ heading: null, rows }] }, widthMm, heightMm),
      ];

/** Which switches light what; what strays when one place opens; bundles in normal use; what a lost battery does. */
export function stateEvidence(
  input: PaperInput,
  proof: ProveResult,
  content: AreaMm,
): readonly Block[] {
  return [
    ...truthBlocks(input, proof, content),
    ...strayBlocks(input, proof, content),
    ...bundleBlocks(proof, content),
    ...usedBlocks(proof, content),
    ...chargeBlocks(proof, content),
  ];
}

function truthBlocks(
  { job }: PaperInput,
  { truth }: ProveResult,
  content: AreaMm,
): readonly Block[] {
  const loads = loadReader(job);
  const rows = truth.map(({ when, engine, lit }) => ({
    cells: {
      when:
        Object.entries(when)
          .map(([part, positions]) => `${part} ${positions.join(" or ")}`)
          .join(", ") || "always",
      engine: engine.length === 4 ? "any" : engine.join(", "),
      lit: lit.map(loads).join("; "),
    },
  }));
  return titled(
    "Which switches light what",
    "Switches that act on each other stand together; what is not named does not matter there.",
    [share("when", "When", 1), natural("engine", "Engine"), share("lit", "Works", 1.2)],
    rows,
    content,
  );
}

function strayBlocks(
  { job }: PaperInput,
  { stray }: ProveResult,
  content: AreaMm,
): readonly Block[] {
  const loads = loadReader(job);
  const rows = stray.map(({ load, open, shareOfRatedPower, symptom }) => ({
    cells: {
      open: open ?? "nothing",
      load: loads(load),
      share: `${printNumber(100 * shareOfRatedPower, 0)} %`,
      symptom,
    },
  }));
  return titled(
    "What glows that should not, when one place opens",
    "To find a fault by: what is seen, and the wire to suspect.",
    [
      natural("open", "Open"),
      natural("load", "Glows"),
      natural("share", "Power", "end"),
      share("symptom", "What a rider sees", 1),
    ],
    rows,
    content,
  );
}

function bundleBlocks({ bundles }: ProveResult, content: AreaMm): readonly Block[] {
  const rows = bundles.map(({ stretch, hottestWire, conductorC, limitC }) => ({
    cells: {
      stretch,
      wire: hottestWire,
      hot: conductorC === null ? "no end" : printQuantity(conductorC, "C"),
      limit: printQuantity(limitC, "C"),
    },
  }));
  return titled(
    "Bundles in normal use",
    "Every wire at its largest lasting current at once; no state surpasses it.",
    [
      share("stretch", "Stretch of loom", 1),
      natural("wire", "Hottest wire"),
      natural("hot", "Conductor", "end"),
      natural("limit", "Class", "end"),
    ],
    rows,
    content,
  );
}

/** Places told on paper: the others have more to spare. */
const MOST_PLACES = 20;

function usedBlocks({ inUse }: ProveResult, content: AreaMm): readonly Block[] {
  const { contacts, cavities, fuses } = inUse;
  const rows = [
    ...[...contacts, ...cavities].map((one) => ({ ...one, ofA: one.ratingA })),
    ...fuses.map((one) => ({ ...one, place: one.fuse, ofA: one.carriesA })),
  ]
    .sort((a, b) => b.currentA / b.ofA - a.currentA / a.ofA || (a.place < b.place ? -1 : 1))
    .slice(0, MOST_PLACES)
    .map(({ place, currentA, ofA }) => ({
      cells: {
        place,
        amps: printQuantity(currentA, "A"),
        rated: printQuantity(ofA, "A"),
        share: `${printNumber((100 * currentA) / ofA, 0)} %`,
      },
    }));
  return titled(
    "Contacts, cavities and fuses in normal use",
    "Largest lasting current in any combination of any group, those nearest their ratings first.",
    [
      share("place", "Place", 1),
      natural("amps", "Carries", "end"),
      natural("rated", "Rated", "end"),
      natural("share", "Share", "end"),
    ],
    rows,
    content,
  );
}

function chargeBlocks({ charge }: ProveResult, content: AreaMm): readonly Block[] {
  const rows = charge.map(({ fault, largestV, solved }) => ({
    cells: {
      fault,
      volts: solved && largestV !== null ? printQuantity(largestV, "V") : "not solved",
    },
  }));
  return titled(
    "While the engine runs fast",
    "Largest volts at any load with the battery gone or a fuse blown.",
    [share("fault", "What is lost", 1), natural("volts", "Largest", "end")],
    rows,
    content,
  );
}
