import fc from "fast-check";
import { expect, it } from "vitest";
import { marksOutside, segmentsOf, struckTexts, textOverlaps } from "../drawingFaults.fixture.ts";
import { plainMarks } from "../expandMark.ts";
import { textMarks } from "../missingGlyphs.ts";
import { palettes } from "../palette.ts";
import { sampleCircuit } from "../sampleCircuit.fixture.ts";
import { area, type LineMark, type Mark } from "../scene.ts";
import { circuitSheet } from "./circuitSheet.ts";
import type { CircuitColumn, CircuitSheetInput, CircuitStep } from "./circuitSheetInput.ts";

const portrait = area(24, 45, 172, 200);
const landscape = area(24, 36, 259, 133);

const ids = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) =>
    mark.kind === "group" ? [...(mark.id ? [mark.id] : []), ...ids(mark.marks)] : [],
  );

it.each([
  ["portrait", portrait],
  ["landscape", landscape],
])("shows every step of the sample once, %s", (_, room) => {
  const { pages, fits } = circuitSheet(sampleCircuit, room);
  expect(fits).toBe(true);
  const drawn = pages.flatMap(ids);
  for (const step of sampleCircuit.columns.flatMap(({ steps }) => steps)) {
    const wanted = sampleCircuit.columns
      .flatMap(({ steps }) => steps)
      .filter(({ id }) => id === step.id).length;
    const tables = step.kind === "part" && step.contacts ? 1 : 0;
    const shared = sampleCircuit.columns
      .flatMap(({ steps }) => steps)
      .some((each) => each.kind === "part" && each.contacts?.id === step.id);
    expect(drawn.filter((id) => id === step.id)).toHaveLength(wanted + (tables || shared ? 1 : 0));
  }
  for (const marks of pages) {
    expect(textOverlaps(marks)).toEqual([]);
    expect(struckTexts(marks)).toEqual([]);
    expect(marksOutside(marks, room)).toEqual([]);
  }
});

it("draws a branch to a neighbour across, and tells a distant one at both ends", () => {
  const { pages } = circuitSheet(sampleCircuit, area(24, 36, 400, 240));
  const texts = textMarks(pages[0]!).map(({ text }) => text);
  expect(texts).toContain("column 3");
  const said = texts.join(" ");
  expect(said).toContain("from DIP 30, column\u00A01");
  expect(said).toContain("to J4, column\u00A01");
  expect(said).not.toContain("from J3");
});

it("joins to a rail only the paths that begin or end there", () => {
  const { pages } = circuitSheet(sampleCircuit, area(24, 36, 400, 240));
  const drawn = plainMarks(pages[0]!, palettes.print);
  const isRail = (mark: (typeof drawn)[number]): mark is LineMark =>
    mark.kind === "line" && mark.stroke.widthMm === 0.7;
  const rails = drawn.filter(isRail).map(({ from }) => from.yMm);
  expect(rails).toHaveLength(2);
  const ends = drawn
    .filter((mark) => mark.kind !== "circle" && !isRail(mark))
    .flatMap(segmentsOf)
    .flat();
  const pathsAt = (yMm: number): number[] => {
    const near = ends.filter((end) => Math.abs(end.yMm - yMm) < 3);
    return [...new Set(near.map(({ xMm }) => Math.round(xMm * 10)))].filter((tenth) =>
      ends.some((end) => Math.round(end.xMm * 10) === tenth && Math.abs(end.yMm - yMm) > 3),
    );
  };
  // Fed from the rail: the headlamp's path. Ending at it: that path and the tell-tale's.
  expect(pathsAt(rails[0]!)).toHaveLength(1);
  expect(pathsAt(rails[1]!)).toHaveLength(2);
});

const word = fc.lorem({ maxCount: 5 });

const step = (i: number): fc.Arbitrary<CircuitStep> =>
  fc.oneof(
    fc.record({
      kind: fc.constant("wire" as const),
      id: fc.constant(`W${i}`),
      number: fc.stringMatching(/^[0-9A-Z]{1,8}$/),
      colours: fc.constant({ main: "blue", tracer: "white" }),
      areaMm2: fc.constantFrom(0.5, 2.5, 16, null),
      code: fc.constant("U/W"),
      word,
      size: fc.constantFrom("1.00 mm²", "size not known"),
      expected: fc.constantFrom(undefined, "12.3 V"),
    }),
    fc.record({
      kind: fc.constant("part" as const),
      id: fc.constant(`P${i}`),
      symbol: fc.constantFrom("fuse", "lamp", "switchMake", "diode", "motor"),
      name: word,
      note: word,
      pinAbove: fc.constantFrom(undefined, "30", "LONGPIN"),
      contacts: fc.constantFrom(undefined, {
        pins: ["30", "31"],
        positions: [
          { name: "off", isRest: true, joins: [] },
          { name: "on", joins: [["30", "31"] as const] },
        ],
      }),
    }),
    fc.record({
      kind: fc.constant("connector" as const),
      connector: fc.constant("X9"),
      id: fc.constant(`X${i}`),
      name: fc.constant(`X${i}.12`),
      place: word,
      liveSide: fc.constantFrom("above" as const, "below" as const),
    }),
    fc.constant({ kind: "joint" as const, id: `J${i}`, name: `J${i}` }),
  );

const column = (i: number): fc.Arbitrary<CircuitColumn> =>
  fc
    .tuple(
      ...Array.from({ length: 9 }, (_, k) => step(10 * i + k)),
      fc.nat(9),
      fc.nat(3),
      fc.nat(3),
    )
    .map((drawn) => {
      const all = drawn.slice(0, 9) as CircuitStep[];
      const [count, startKind, endKind] = drawn.slice(9) as number[];
      const starts = [
        { kind: "feed" },
        { kind: "reference", label: "from F2 on the sheet for signals" },
        { kind: "branch", column: String(i - 1), joint: "" },
        { kind: "branch", column: "0", joint: "" },
      ] as const;
      const ends = [
        { kind: "earth" },
        { kind: "frame", label: "frame at the tail lamp bracket" },
        { kind: "join", column: String(i - 1), joint: "" },
        { kind: "reference", label: "to the rectifier" },
      ] as const;
      return {
        id: String(i),
        start: starts[startKind!]!,
        steps: all.slice(0, count),
        end: ends[endKind!]!,
      };
    });

/** Points branches and joins at joints that exist; those that cannot become plain. */
function mended(columns: readonly CircuitColumn[]): CircuitColumn[] {
  const jointOf = (id: string, which: number): string | undefined =>
    columns
      .find((each) => each.id === id)
      ?.steps.filter(({ kind }) => kind === "joint")
      .at(which)?.id;
  return columns.map((each) => {
    const { start, end } = each;
    const from =
      start.kind === "branch" && start.column !== each.id ? jointOf(start.column, 0) : undefined;
    const to = end.kind === "join" ? jointOf(end.column, -1) : undefined;
    return {
      ...each,
      start: start.kind !== "branch" ? start : from ? { ...start, joint: from } : { kind: "feed" },
      end: end.kind !== "join" ? end : to ? { ...end, joint: to } : { kind: "earth" },
    };
  });
}

it("draws any paths without overlap, in place, whole, on as many pages as they need", () => {
  const sheets = fc.tuple(column(0), column(1), column(2)).map(
    (columns): CircuitSheetInput => ({
      feedLabel: "live −",
      earthLabel: "earth +",
      columns: mended(columns),
    }),
  );
  fc.assert(
    fc.property(sheets, fc.constantFrom(portrait, landscape), (input, room) => {
      const { pages, fits } = circuitSheet(input, room);
      expect(fits).toBe(true);
      const drawn = pages.flatMap(ids);
      for (const { id } of input.columns.flatMap(({ steps }) => steps)) expect(drawn).toContain(id);
      for (const marks of pages) {
        expect(textOverlaps(marks)).toEqual([]);
        expect(struckTexts(marks)).toEqual([]);
        expect(marksOutside(marks, room)).toEqual([]);
      }
    }),
    { numRuns: 30 },
  );
});

it("ties the halves of a relay by column, and by sheet where the other is not on this one", () => {
  const half = (is: "coil" | "contact", id: string): CircuitStep => ({
    kind: "part",
    id,
    symbol: is === "coil" ? "relayCoil" : "relayContact",
    name: id,
    note: "",
    half: {
      is,
      other: is === "coil" ? "contact" : "coil",
      elsewhere: "contact on the sheet horn",
    },
  });
  const path = (id: string, step: CircuitStep): CircuitColumn => ({
    id,
    start: { kind: "feed" },
    steps: [step],
    end: { kind: "earth" },
  });
  const columns = [
    path("a", half("contact", "K1")),
    path("b", half("coil", "K1")),
    path("c", half("coil", "K2")),
  ];
  const { pages } = circuitSheet({ feedLabel: "+", earthLabel: "−", columns }, landscape);
  const said = pages.flatMap((marks) => textMarks(marks).map(({ text }) => text)).join(" ");
  expect(said).toContain("coil in column\u00A02");
  expect(said).toContain("contact in column\u00A01");
  expect(said).toContain("contact on the sheet horn");
});

it("says when the paper is too small", () => {
  expect(circuitSheet(sampleCircuit, area(0, 0, 40, 200)).fits).toBe(false);
  expect(circuitSheet(sampleCircuit, area(0, 0, 259, 30)).fits).toBe(false);
});
