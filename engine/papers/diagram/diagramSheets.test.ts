import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";
import {
  marksOutside,
  segmentsOf,
  struckTexts,
  textOverlaps,
} from "../../drawing/drawingFaults.fixture.ts";
import { type Mark, palettes, plainMarks, sheetRoom } from "../../drawing/index.ts";
import { lineCrossings } from "../../drawing/lineCrossings.fixture.ts";
import { textMarks } from "../../drawing/missingGlyphs.ts";
import { type Job, readJob } from "../../job/index.ts";
import { checkedJob } from "../../judge/index.ts";
import { BOARD_PRINT } from "../board/boardPrint.ts";
import { type PaperInput, paperInput } from "../paperInput.ts";
import { diagramPapers } from "./diagramPapers.ts";
import { diagramSheet } from "./diagramSheets.ts";
import { diagramTiles } from "./diagramTiles.ts";

const demos = new URL("../../../demos/", import.meta.url);
const machines = new URL("../../../cases/reference-machines/", import.meta.url);

function jobOf(file: string, folder = demos): Job {
  const read = readJob(readFileSync(new URL(file, folder), "utf8"));
  if (!read.ok) throw new Error(`${file} cannot be read`);
  return read.job;
}

function inputOf(job: Job): PaperInput {
  const { design, result } = checkedJob(job);
  return paperInput(design, result, { fingerprint: "", paper: "a4" });
}

const references = readdirSync(machines, { withFileTypes: true })
  .filter((entry) => entry.isDirectory())
  .map(({ name }) => `${name}/job.json`);
const ofDemos = readdirSync(demos).filter((file) => file.endsWith(".json"));
const inputs = new Map([
  ...ofDemos.map((file) => [file, inputOf(jobOf(file))] as const),
  ...references.map((file) => [file, inputOf(jobOf(file, machines))] as const),
]);
const files = [...inputs.keys()];

const ids = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) =>
    mark.kind === "group" ? [...(mark.id ? [mark.id] : []), ...ids(mark.marks)] : [],
  );

/** Ids of groups that have a wire of the drawing in them. */
const wireIds = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== "group") return [];
    const own = mark.marks.some(({ kind }) => kind === "wire") && mark.id ? [mark.id] : [];
    return [...own, ...wireIds(mark.marks)];
  });

it.each(files)(
  "%s stands whole on A2: every wire once, nothing over anything, no crossing",
  (file) => {
    const input = inputs.get(file)!;
    const { sheet, fits, setRatio } = diagramSheet(input, "a2");
    expect(fits).toBe(true);
    expect(wireIds(sheet.marks).sort()).toEqual(input.job.wires.map(({ id }) => id).sort());
    expect(textOverlaps(sheet.marks)).toEqual([]);
    expect(struckTexts(sheet.marks)).toEqual([]);
    expect(lineCrossings(sheet.marks)).toEqual([]);
    const { content } = sheetRoom(sheet.paper, input.info, sheet.head);
    expect(marksOutside(sheet.marks, content)).toEqual([]);
    const heights = textMarks(sheet.marks).map(({ capHeightMm }) => capHeightMm);
    // Contact tables have fine print of their own, set in the same ratio.
    expect(Math.min(...heights)).toBeGreaterThanOrEqual(1.8 * setRatio - 1e-9);
  },
);

it("says the number of every wire and shows the contact table of every switch once", () => {
  for (const input of inputs.values()) {
    const { marks } = diagramSheet(input, "a2").sheet;
    const texts = new Set(textMarks(marks).map(({ text }) => text));
    for (const { id, number } of input.job.wires) expect(texts.has(number ?? id)).toBe(true);
    const drawn = ids(marks);
    for (const part of input.job.parts) {
      if (part.kind !== "switch") continue;
      const tables = tableNames(marks).filter((name) => name === `contacts of ${part.name}`);
      expect(tables).toHaveLength(
        input.job.parts.filter((one) => one.kind === "switch" && one.name === part.name).length,
      );
      expect(drawn).toContain(part.id);
    }
  }
});

const tableNames = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) =>
    mark.kind === "group" ? [mark.name ?? "", ...tableNames(mark.marks)] : [],
  );

it("names the column of a relay's contacts at its coil and of its coil at its contacts", () => {
  const input = inputs.get("brenzach-twin.json")!;
  const { layout, sheet } = diagramSheet(input, "a2");
  const columns = layout.segments
    .filter(({ segment }) => segment.items.some(({ id }) => id === "RHI"))
    .map(({ column }) => column + 1);
  expect(columns).toHaveLength(2);
  const said = saidIn(sheet.marks, "RHI");
  for (const column of columns) expect(said).toContain(`in ${column}`);
});

it("names at each filament of a lamp the column of the other", () => {
  const input = inputs.get("minazuru-four.json")!;
  const { layout, sheet } = diagramSheet(input, "a2");
  const columns = layout.segments
    .filter(({ segment }) => segment.items.some(({ id }) => id === "HEAD"))
    .map(({ column }) => column + 1);
  expect(columns).toHaveLength(2);
  const said = saidIn(sheet.marks, "HEAD");
  for (const column of columns) expect(said).toContain(`in ${column}`);
});

const saidIn = (marks: readonly Mark[], id: string): string[] =>
  marks.flatMap((mark) => {
    if (mark.kind !== "group") return [];
    return mark.id === id ? textMarks(mark.marks).map(({ text }) => text) : saidIn(mark.marks, id);
  });

it("is the same drawing each time, and keeps the order somebody gave it", () => {
  const job = jobOf("orivesta-enduro.json");
  const one = diagramSheet(inputOf(job), "a2");
  expect(diagramSheet(inputOf(job), "a2").sheet.marks).toEqual(one.sheet.marks);
  const columnOf = (id: string, drawn: typeof one): number =>
    drawn.layout.segments.find(({ segment }) => segment.items.some((item) => item.id === id))!
      .column;
  const [first, last] = siblingsOf(one);
  const put = {
    ...job,
    layout: {
      ...job.layout,
      diagram: { [first]: { xMm: 500, yMm: 0 }, [last]: { xMm: 10, yMm: 0 } },
    },
  };
  const turned = diagramSheet(inputOf(put), "a2");
  expect(columnOf(first, one)).toBeLessThan(columnOf(last, one));
  expect(columnOf(last, turned)).toBeLessThan(columnOf(first, turned));
});

/** First items of two ways that part at one place and lead to no other. */
function siblingsOf({ layout }: ReturnType<typeof diagramSheet>): readonly [string, string] {
  for (const { id } of layout.nodes) {
    const ways = layout.segments
      .filter(({ segment }) => segment.from === id && segment.to === null)
      .sort((p, q) => p.column - q.column)
      .map(({ segment }) => segment.items[0]!.id);
    if (ways.length > 1) return [ways[0]!, ways.at(-1)!];
  }
  throw new Error("no place with two plain ways");
}

it("goes on small paper in tiles that show every line of the large sheet", () => {
  const input = inputs.get("brenzach-twin.json")!;
  const { sheet } = diagramSheet(input, "a2");
  const tiles = diagramTiles(input.info, sheet, { ...BOARD_PRINT, paper: "a4" });
  expect(tiles.length).toBeGreaterThan(3);
  const shown = new Set(
    tiles.flatMap((tile, i) => wireIds(tile.ownPage!(i + 1, tiles.length).marks)),
  );
  expect([...shown].sort()).toEqual(input.job.wires.map(({ id }) => id).sort());
  for (const [i, tile] of tiles.entries()) {
    const said = textMarks(tile.ownPage!(i + 1, tiles.length).marks).map(({ text }) => text);
    expect(said).toContain("100 mm");
  }
});

it("has wire numbers 5 mm high on the roll, and all of the sheet", () => {
  for (const input of inputs.values()) {
    const papers = diagramPapers(input, "x", { ...BOARD_PRINT, paper: "a4" });
    const [roll] = papers.flatMap(({ plots }) => plots ?? []);
    if (papers.length === 0) continue;
    const numbers = new Set(input.job.wires.map((wire) => wire.number ?? wire.id));
    const capsMm = textMarks(roll!.page.marks)
      .filter(({ text, weight }) => numbers.has(text) && weight === 800)
      .map(({ capHeightMm }) => capHeightMm);
    expect(capsMm.length).toBeGreaterThan(0);
    for (const capMm of capsMm) expect(capMm).toBeCloseTo(5, 9);
    expect(wireIds(roll!.page.marks).sort()).toEqual(input.job.wires.map(({ id }) => id).sort());
  }
});

it("has no line thinner than a quarter of a millimetre", () => {
  const { sheet } = diagramSheet(inputs.get("minazuru-four.json")!, "a2");
  const thin = plainMarks(sheet.marks, palettes.print).filter(
    (mark) =>
      mark.kind !== "text" &&
      mark.stroke !== undefined &&
      mark.stroke.widthMm < 0.25 &&
      segmentsOf(mark).length > 0,
  );
  expect(thin).toEqual([]);
});
