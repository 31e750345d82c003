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
import { continuityRows, firstPowerRows, insulationRows, lookRows, roadRows } from "./benchRows.ts";
import { continuityBlocks } from "./continuityBlocks.ts";
import { dropRows } from "./dropRows.ts";
import { chargeRows, drainRows, earthRows, starterRows } from "./machineRows.ts";
import { stateRows } from "./stateRows.ts";
import { TEST_COLUMNS, TEST_HEADINGS, type TestRow, testCsvRow, testGroups } from "./testRow.ts";

/** One heading of the test sheet with its rows in their order. */
export interface TestSection {
  readonly heading: string;
  readonly lead: string;
  readonly rows: readonly TestRow[];
}

/** Every test of the finished loom in its order, with what is expected, within what, and an empty box. */
export function testPaper(input: PaperInput, name: string): PackPaper {
  const continuity = continuityRows(input);
  const sections = sectionsOf(input);
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
    (content) => testBlocks(content, sections, continuity),
  );
  const rows = [
    TEST_HEADINGS,
    ...[...sections[0]!.rows, ...continuity, ...sections.slice(1).flatMap((one) => one.rows)].map(
      testCsvRow,
    ),
  ];
  return { name, title: "Test sheet", sheets, rows, drawings: null };
}

/** Every section but continuity, which is laid out two wires beside each other. */
export function sectionsOf(input: PaperInput): readonly TestSection[] {
  return [
    { heading: "1. Before anything", lead: "", rows: lookRows(input) },
    {
      heading: "3. Insulation",
      lead: "Never a high-voltage test of a loom with parts on it.",
      rows: insulationRows(),
    },
    { heading: "4. First power", lead: "", rows: firstPowerRows(input) },
    {
      heading: "5. State by state",
      lead: "Volts are measured at the pins named, current in the battery lead.",
      rows: stateRows(input),
    },
    {
      heading: "6. Volt drops",
      lead: "The worst state found for each load. Live side and earth side are measured from the battery post to the load's pin.",
      rows: dropRows(input),
    },
    {
      heading: "7. Earths",
      lead: "With the loads of that earth on: volts from the place named to the earthed battery post.",
      rows: earthRows(input),
    },
    {
      heading: "8. Charging",
      lead: "Engine warm. Computed volts are those of a battery that takes all the current offered; as it fills they rise to the regulator's setting.",
      rows: chargeRows(input),
    },
    { heading: "9. Starter", lead: "", rows: starterRows(input) },
    { heading: "10. Standing drain", lead: "", rows: drainRows(input) },
    { heading: "11. Last", lead: "", rows: roadRows() },
  ];
}

function testBlocks(
  content: AreaMm,
  sections: readonly TestSection[],
  continuity: readonly TestRow[],
): readonly Block[] {
  const [first, ...others] = sections.map((section) => sectionBlocks(section, content));
  return [
    ...first!,
    ...headingBlock("2. Continuity, wire by wire", content.widthMm, 2),
    ...paragraphBlocks(
      "From end to end, meter leads nulled, and to no other wire. Expected: the copper alone. Tick when the wire reaches its own far end and nothing else.",
      content.widthMm,
    ),
    ...continuityBlocks(continuity, content),
    ...others.flat(),
    signBlock(content.widthMm),
  ];
}

function sectionBlocks({ heading, lead, rows }: TestSection, content: AreaMm): readonly Block[] {
  if (rows.length === 0) return [];
  return [
    ...headingBlock(heading, content.widthMm, 2),
    ...(lead === "" ? [] : paragraphBlocks(lead, content.widthMm).map(kept)),
    ...tableBlocks(
      { columns: TEST_COLUMNS, groups: testGroups(rows) },
      content.widthMm,
      content.heightMm,
    ),
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
