import { expect, test } from "vitest";
import { allTables, type FigureColumn, figure, figureOrNull, leansOnMemory } from "./index.ts";

test("a figure brings its unit, place and source", () => {
  expect(figure("wires", "thin-1.0", "ratedA")).toEqual({
    value: 16.5,
    unit: "A",
    table: "wires",
    row: "thin-1.0",
    source: "UK catalogue sheet, thin wall single core, ISO 6722 class B, -40..105 C",
    place: "size rows",
    confidence: "seen",
  });
});

test("a column with its own confidence is not covered by the row's", () => {
  expect(figure("wires", "thick-1.0", "ratedA").confidence).toBe("seen");
  expect(figure("wires", "thick-1.0", "odNominalMm").confidence).toBe("memory");
});

test("the unit of a value,unit table is the row's", () => {
  expect(figure("copper", "resistivity-20", "value").unit).toBe("ohm m");
});

test("what is not known is null, and asking for it as known is a bug", () => {
  expect(figureOrNull("wires", "imp-35/.012", "ratedA")).toBeNull();
  expect(() => figure("wires", "imp-35/.012", "ratedA")).toThrow(/not known/);
  expect(() => figure("wires", "no-such-wire", "ratedA")).toThrow(/no row no-such-wire/);
});

test("one remembered figure among many is enough to lean on memory", () => {
  const seen = figure("wires", "thin-1.0", "ratedA");
  const remembered = figure("wires", "battery-16", "ratedA");
  expect(leansOnMemory([seen])).toBe(false);
  expect(leansOnMemory([seen, remembered])).toBe(true);
});

test("every figure of every table can be cited", () => {
  for (const [table, { rows, units }] of Object.entries(allTables)) {
    for (const row of rows)
      for (const column of Object.keys(units)) {
        const found = figureOrNull(table as "wires", row.id, column as FigureColumn<"wires">);
        if (found === null) continue;
        const cited = `${table} ${row.id} ${column}: ${found.source}, ${found.confidence}`;
        expect(cited).not.toMatch(/undefined|null/);
        expect(found.unit, cited).not.toBe("");
      }
  }
});
