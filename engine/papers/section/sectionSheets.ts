import {
  type Block,
  type CsvValue,
  type Drawn,
  LINE_MM,
  type Mark,
  moveMarks,
  type Paper,
  point,
  type Sheet,
  TEXT_STYLE,
  textMark,
  wrapText,
} from "../../drawing/index.ts";
import { printNumber } from "../../units/index.ts";
import type { BundleReader } from "../board/bundles.ts";
import { lettersName } from "../colourText.ts";
import { fewestSheets } from "../fewestSheets.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";
import { SECTION_SCALE, sectionDrawing, sectionKey } from "./sectionDrawing.ts";
import { type Section, sectionsOf } from "./sectionsOf.ts";

const GAP_MM = 8;
const WORDS_GAP_MM = 4;
/** Words narrower than this take the whole width of the sheet instead of half. */
const WORDS_LEAST_MM = 60;

/** Every bundle that differs from the others, cut through as it was packed, twice as large as life. */
export function sectionSheets(input: PaperInput, bundleOf: BundleReader): readonly Sheet[] {
  const sections = sectionsOf(input, bundleOf);
  if (sections.length === 0) return [];
  const laid = ({ orientation }: Paper): readonly Sheet[] =>
    blockSheets(
      input,
      {
        documentName: "bundle sections",
        orientation,
        head: {
          title: "Bundle sections",
          lead: `Every bundle cut through, ${SECTION_SCALE}:1. Full ring: the tightest it can lie; broken ring: as a hand lays it. Colours in ${lettersName(input.job.colours.letters)}.`,
        },
      },
      ({ widthMm }) =>
        rows(
          sections.map((section) => drawn(section, widthMm)),
          widthMm,
        ),
    );
  return fewestSheets(input, laid, ["landscape", "portrait"]);
}

/** As many beside each other as the sheet is wide. */
function rows(drawings: readonly Drawn[], widthMm: number): readonly Block[] {
  const blocks: { heightMm: number; marks: Mark[]; usedMm: number; gapAfterMm: number }[] = [];
  for (const one of drawings) {
    const last = blocks.at(-1);
    if (last === undefined || last.usedMm + GAP_MM + one.widthMm > widthMm) {
      const { heightMm, widthMm: usedMm } = one;
      blocks.push({ heightMm, marks: [...one.marks], usedMm, gapAfterMm: 6 });
      continue;
    }
    last.marks.push(...moveMarks(one.marks, last.usedMm + GAP_MM, 0));
    last.usedMm += GAP_MM + one.widthMm;
    last.heightMm = Math.max(last.heightMm, one.heightMm);
  }
  return blocks;
}

/** Picture at the left, its figures at the right: half as wide as the sheet where the words keep room enough, else as wide as the sheet. */
function drawn(section: Section, sheetMm: number): Drawn {
  const picture = sectionDrawing(section);
  const wordsAt = (widthMm: number): number => widthMm - picture.widthMm - WORDS_GAP_MM;
  const halfMm = wordsAt((sheetMm - GAP_MM) / 2);
  const wordsMm = halfMm >= WORDS_LEAST_MM ? halfMm : wordsAt(sheetMm);
  const { bundle } = section;
  const sleeve = bundle.sleeve
    .filter(({ ok }) => ok)
    .map(({ kind, sizeMm }) => `${KINDS[kind]} ${printNumber(sizeMm, sizeMm % 1 === 0 ? 0 : 1)}`)
    .join(", ");
  const lines: readonly (readonly [string, boolean])[] = [
    [section.name, true],
    [section.places, false],
    [
      `${section.wires.length} ${section.wires.length === 1 ? "wire" : "wires"}, tightest ${printNumber(bundle.tightestMm, 1)} mm`,
      false,
    ],
    [
      `as laid ${printNumber(bundle.asLaidLeastMm, 1)} to ${printNumber(bundle.asLaidMm, 1)} mm; bend no tighter than ${printNumber(bundle.bendRadiusMm.fixed, 0)} mm`,
      false,
    ],
    [sleeve === "" ? "no listed covering fits" : `covering, inside mm: ${sleeve}`, false],
  ];
  const wordsX = picture.widthMm + WORDS_GAP_MM;
  let yMm = 0;
  const words = lines.flatMap(([text, isStrong]): Mark[] => {
    const style = isStrong ? TEXT_STYLE.part : TEXT_STYLE.text;
    return wrapText(text, wordsMm, style.capHeightMm, style.weight).map((line) => {
      yMm += isStrong ? 5.6 : 4.4;
      return textMark(line, wordsX, yMm, style);
    });
  });
  const key = sectionKey(section.wires, wordsMm);
  const keyY = yMm + 2.4;
  yMm = keyY + key.heightMm;
  return {
    marks: [
      ...picture.marks,
      ...words,
      ...moveMarks(key.marks, wordsX, keyY),
      ...rule(picture.widthMm + 2, Math.max(yMm, picture.heightMm)),
    ],
    widthMm: wordsX + wordsMm,
    heightMm: Math.max(picture.heightMm, yMm + 2),
  };
}

const KINDS = { "pvc-sleeve": "sleeve", conduit: "conduit", "heat-shrink": "heat-shrink" } as const;

const rule = (xMm: number, heightMm: number): readonly Mark[] => [
  {
    kind: "line",
    from: point(xMm, 1),
    to: point(xMm, heightMm),
    stroke: { widthMm: LINE_MM.leader, colour: "rule" },
  },
];

/** The same sections for a spreadsheet. */
export function sectionRows(
  input: PaperInput,
  bundleOf: BundleReader,
): readonly (readonly CsvValue[])[] {
  return [
    [
      "section",
      "places",
      "wires",
      "tightestMm",
      "asLaidLeastMm",
      "asLaidMm",
      "lowerBoundMm",
      "seed",
      "stepCount",
    ],
    ...sectionsOf(input, bundleOf).map(({ name, places, wires, bundle }) => [
      name,
      places,
      wires.map(({ number }) => number).join(" "),
      bundle.tightestMm,
      bundle.asLaidLeastMm,
      bundle.asLaidMm,
      bundle.lowerBoundMm,
      bundle.seed,
      bundle.stepCount,
    ]),
  ];
}
