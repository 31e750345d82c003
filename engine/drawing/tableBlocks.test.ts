import fc from "fast-check";
import { expect, it } from "vitest";
import { marksOutside, struckTexts, textOverlaps } from "./drawingFaults.fixture.ts";
import { layoutTable } from "./layoutTable.ts";
import { textMarks } from "./missingGlyphs.ts";
import { sampleTable } from "./sampleSheets.fixture.ts";
import { area, type Mark } from "./scene.ts";
import type { Table } from "./table.ts";

const page = area(20, 40, 172, 200);

const groupIds = (marks: readonly Mark[]): string[] =>
  marks.flatMap((mark) => (mark.kind === "group" && mark.id !== undefined ? [mark.id] : []));

const headings = (marks: readonly Mark[]): string[] => textMarks(marks).map(({ text }) => text);

it("prints every row once, in order, under headings that come again on each page", () => {
  const pages = layoutTable(sampleTable, page);
  expect(pages.length).toBeGreaterThan(2);
  const rows = sampleTable.groups.flatMap((group) => group.rows.map((row) => row.id));
  expect(pages.flatMap(({ marks }) => groupIds(marks))).toEqual(rows);
  for (const { marks } of pages) expect(headings(marks).slice(0, 2)).toEqual(["No.", "Colour"]);
  expect(headings(pages[1]!.marks)).toContain("Lighting, continued");
});

it("leaves no group's name alone at the foot of a page", () => {
  for (let heightMm = 60; heightMm < 260; heightMm += 7) {
    for (const { marks } of layoutTable(sampleTable, { ...page, heightMm })) {
      const last = textMarks(marks)
        .toSorted((a, b) => a.at.yMm - b.at.yMm)
        .at(-1)!;
      expect(last.text).not.toBe("Ignition and charging");
    }
  }
});

const cell = fc.oneof(
  fc.string({ maxLength: 60, unit: "grapheme" }).map((text) => text.replace(/\p{M}|\p{Cf}/gu, "")),
  fc.record({
    kind: fc.constant("text" as const),
    text: fc.lorem({ maxCount: 12 }),
    note: fc.lorem({ maxCount: 6 }),
  }),
  fc.constant({ kind: "tick" as const }),
  fc.constant({ kind: "writeIn" as const }),
  fc.constant(null),
  fc
    .constantFrom("stop", "mend", "advise", "not-proven")
    .map((severity) => ({ kind: "severity" as const, severity: severity as "stop" })),
  fc.stringMatching(/^[0-9A-Z]{1,12}$/).map((text) => ({ kind: "wireNumber" as const, text })),
  fc.record({
    kind: fc.constant("wire" as const),
    colours: fc.constant({ main: "red" }),
    areaMm2: fc.constantFrom(0.5, 4, 16),
    code: fc.constantFrom("R", "Lg/R"),
    word: fc.lorem({ maxCount: 3 }),
  }),
);

it("lets nothing overlap, be struck through or leave the page, whatever the cells hold", () => {
  const rows = fc.array(fc.record({ a: cell, b: cell, c: cell }), { minLength: 1, maxLength: 8 });
  fc.assert(
    fc.property(rows, fc.integer({ min: 60, max: 220 }), (list, heightMm) => {
      const table: Table = {
        columns: [
          { key: "a", heading: "First column", width: { kind: "fixed", mm: 40 } },
          {
            key: "b",
            heading: "Second",
            width: { kind: "share", share: 1, minMm: 30 },
            align: "end",
          },
          { key: "c", heading: "Third", width: { kind: "fixed", mm: 40 }, align: "middle" },
        ],
        groups: [{ heading: "Group", rows: list.map((cells, i) => ({ id: `R${i}`, cells })) }],
      };
      const room = { ...page, heightMm };
      for (const { marks } of layoutTable(table, room)) {
        expect(textOverlaps(marks)).toEqual([]);
        expect(struckTexts(marks)).toEqual([]);
        expect(marksOutside(marks, room)).toEqual([]);
      }
    }),
    { numRuns: 60 },
  );
});

it("goes on with a row longer than a page under its own line", () => {
  const text = Array.from({ length: 400 }, (_, i) => `word${i}`).join(" ");
  const table: Table = {
    columns: [{ key: "a", heading: "A", width: { kind: "fixed", mm: 30 } }],
    groups: [{ heading: null, rows: [{ id: "R", cells: { a: text } }] }],
  };
  const pages = layoutTable(table, { ...page, heightMm: 80 });
  const set = pages.flatMap(({ marks }) => headings(marks)).filter((line) => line !== "A");
  expect(set.join(" ")).toBe(text);
  for (const { marks } of pages) expect(marksOutside(marks, { ...page, heightMm: 80 })).toEqual([]);
});

it("refuses columns wider than the paper", () => {
  const table: Table = {
    columns: [{ key: "a", heading: "A", width: { kind: "fixed", mm: 300 } }],
    groups: [],
  };
  expect(() => layoutTable(table, page)).toThrow("300.0 mm");
});
