import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { readTable } from "./readTable.ts";
import { generateTables, readSources } from "./tables.ts";
import { unitOfColumn } from "./unitOfColumn.ts";

const sources = new Set(["book"]);
const headings = "id,areaMm2,ratedA?,ratedAConfidence?,source,place,confidence";
const read = (...rows: string[]) => readTable("t", [headings, ...rows].join("\n"), sources);

test("a clean table reads cell by cell, a known gap as null", () => {
  const table = read("a,1.5,-,-,book,p. 1,seen", "b,2,17.5,memory,book,p. 1,seen");
  expect(table.rows).toEqual([
    ["a", 1.5, null, null, "book", "p. 1", "seen"],
    ["b", 2, 17.5, "memory", "book", "p. 1", "seen"],
  ]);
  expect(table.columns[1]).toEqual({
    name: "areaMm2",
    kind: "number",
    unit: "mm2",
    mayBeMissing: false,
  });
});

test.each([
  ["a,,-,-,book,p. 1,seen", /blank/],
  ["a,-,-,-,book,p. 1,seen", /may not be missing/],
  ["a,1.5,-,-,,p. 1,seen", /blank/],
  ["a,1.5,-,-,book,-,seen", /may not be missing/],
  ["a,1 500,-,-,book,p. 1,seen", /not a number/],
  ["a,NaN,-,-,book,p. 1,seen", /not a number/],
  ["a,1e999,-,-,book,p. 1,seen", /not a number/],
  ["a,0x10,-,-,book,p. 1,seen", /not a number/],
  ["a,1.5,-,-,book,p. 1,certain", /not one of seen/],
  ["a,1.5,9,surely,book,p. 1,seen", /not one of seen/],
  ["a,1.5,-,-,pamphlet,p. 1,seen", /not in sources/],
  ["a,1.5,-,-,book,p. 1", /6 cells under 7/],
  ["a, 1.5,-,-,book,p. 1,seen", /space around/],
])("%s is refused", (row, why) => expect(() => read(row)).toThrow(why));

test("a row that appears twice is refused, and so is an empty table", () => {
  expect(() => read("a,1,-,-,book,p. 1,seen", "a,2,-,-,book,p. 1,seen")).toThrow(/appears twice/);
  expect(() => read()).toThrow(/no rows/);
});

test.each([
  ["id,areaMm2,source,place", /no column "confidence"/],
  ["id,id,source,place,confidence", /appears twice/],
  ["id,area mm2,source,place,confidence", /bad heading/],
  ["id?,source,place,confidence", /may not be missing/],
])("headings %s are refused", (line, why) =>
  expect(() => readTable("t", `${line}\n`, sources)).toThrow(why),
);

test("a unit is read from the end of a heading and from nowhere else", () => {
  expect(unitOfColumn("odMaxMm")).toBe("mm");
  expect(unitOfColumn("maxOhmPerKm20")).toBe("ohm/km");
  expect(unitOfColumn("limit12V")).toBe("V");
  expect(unitOfColumn("colour")).toBeNull();
  expect(unitOfColumn("note")).toBeNull();
});

test("sources with blanks or repeats are refused", () => {
  expect(() => readSources("id,title\na,\n")).toThrow(/blank/);
  expect(() => readSources("id,title\na,x\na,y\n")).toThrow(/twice/);
});

test("the committed modules are what the CSV files say", () => {
  for (const [path, text] of generateTables()) {
    const full = fileURLToPath(new URL(`../../${path}`, import.meta.url));
    expect(readFileSync(full, "utf8") === text, `${path}: run npm run generate`).toBe(true);
  }
});
