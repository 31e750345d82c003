import fc from "fast-check";
import { expect, test } from "vitest";
import { coveringRows } from "./coveringRows.ts";

test("any three factors meet every combination of their levels", () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 1, max: 4 }), { minLength: 3, maxLength: 7 }),
      (levelCounts) => {
        const rows = coveringRows(levelCounts);
        expect(rows.every((row) => row.every((level, f) => level < levelCounts[f]!))).toBe(true);
        for (let a = 0; a < levelCounts.length; a++)
          for (let b = a + 1; b < levelCounts.length; b++)
            for (let c = b + 1; c < levelCounts.length; c++) {
              const met = new Set(rows.map((row) => `${row[a]} ${row[b]} ${row[c]}`));
              expect(met.size).toBe(levelCounts[a]! * levelCounts[b]! * levelCounts[c]!);
            }
      },
    ),
    { numRuns: 50 },
  );
});

test("fewer than three factors are met in full, none needs no row, and the rows are the same every time", () => {
  expect(coveringRows([])).toEqual([]);
  expect(coveringRows([3])).toHaveLength(3);
  expect(new Set(coveringRows([2, 3]).map(String)).size).toBe(6);
  const many = [2, 2, 2, 3, 3, 2, 2, 2, 4, 2, 2, 2];
  expect(coveringRows(many)).toEqual(coveringRows(many));
  // Far fewer than the product of 12 factors.
  expect(coveringRows(many).length).toBeLessThan(120);
});
