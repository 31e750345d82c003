import {
  type AreaMm,
  area,
  type Block,
  headingBlock,
  LINE_MM,
  type Mark,
  paragraphBlocks,
  TEXT_STYLE,
  tableBlocks,
  textMark,
} from "../../drawing/index.ts";
import type { PackPaper } from "../packPaper.ts";
import type { PaperInput } from "../paperInput.ts";
import { blockSheets } from "../sheets.ts";
import { continuityBlocks } from "./continuityBlocks.ts";
import { TEST_COLUMNS, TEST_HEADINGS, testCsvRow, testGroups } from "./testRow.ts";
import { type TestSection, testSections } from "./testSections.ts";

/** Every test of the finished loom in its order, with what is expected, within what, and an empty box. */
export function testPaper(input: PaperInput, name: string): PackPaper {
  const sections = testSections(input);
  const sheets = blockSheets(
    input,
    {
      documentName: "test sheet",
      orientation: "portrait",
      head: {
        title: "Test sheet",
        lead: "In this order. Expected values are computed for this machine with a full battery and copper at 20 °C. An empty box is a test not done.",
      },
    },
    (content) => [
      ...sections.flatMap((section) => sectionBlocks(section, content)),
      signBlock(content.widthMm),
    ],
  );
  const rows = [TEST_HEADINGS, ...sections.flatMap((section) => section.rows.map(testCsvRow))];
  return { name, title: "Test sheet", sheets, rows, drawings: null };
}

function sectionBlocks(
  { heading, lead, rows, isTwoUp = false }: TestSection,
  content: AreaMm,
): readonly Block[] {
  if (rows.length === 0) return [];
  const leadBlocks = lead === "" ? [] : paragraphBlocks(lead, content.widthMm).map(kept);
  const table = { columns: TEST_COLUMNS, groups: testGroups(rows) };
  return [
    ...headingBlock(heading, content.widthMm, 2),
    ...leadBlocks,
    ...(isTwoUp
      ? continuityBlocks(rows, content)
      : tableBlocks(table, content.widthMm, content.heightMm)),
  ];
}

const kept = (block: Block): Block => ({ ...block, keepWithNext: true });

/** Who tested, when, with what, and a line to sign on. */
function signBlock(widthMm: number): Block {
  const words = ["Tested by", "Date", "Meter", "Signature"];
  const cellMm = widthMm / words.length;
  const marks = words.flatMap((word, i): Mark[] => [
    {
      kind: "rect",
      area: area(i * cellMm, 0, cellMm, 16),
      stroke: { widthMm: LINE_MM.symbol, colour: "ink" },
    },
    textMark(word, i * cellMm + 1.5, 3.4, { ...TEXT_STYLE.fine, colour: "ink" }),
  ]);
  return { heightMm: 16, marks, gapBeforeMm: 6 };
}
