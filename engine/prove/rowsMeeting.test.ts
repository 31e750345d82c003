import fc from "fast-check";
import { expect, test } from "vitest";
import { rowsMeeting } from "./rowsMeeting.ts";

test("any four factors meet every combination of their levels", () => {
  const counts = fc.array(fc.integer({ min: 2, max: 4 }), { minLength: 4, maxLength: 7 });
  fc.assert(
    fc.property(
      counts,
      fc.array(fc.nat(), { minLength: 8, maxLength: 8 }),
      (levelCounts, picks) => {
        const rows = rowsMeeting(levelCounts, 4);
        const left = levelCounts.map((_, f) => f);
        const factors = picks.slice(0, 4).map((pick) => left.splice(pick % left.length, 1)[0]!);
        const wanted = factors.map((f, k) => [f, picks[4 + k]! % levelCounts[f]!] as const);
        expect(rows.some((row) => wanted.every(([f, level]) => row[f] === level))).toBe(true);
      },
    ),
  );
});

test("fewer factors than asked for are met whole", () => {
  expect(rowsMeeting([2, 3], 4)).toHaveLength(6);
  expect(rowsMeeting([], 4)).toEqual([]);
});

test("the rows are far fewer than all combinations, and the same each time", () => {
  const levelCounts = Array.from({ length: 12 }, () => 2);
  const rows = rowsMeeting(levelCounts, 4);
  expect(rows.length).toBeLessThan(2 ** 12 / 20);
  expect(rowsMeeting(levelCounts, 4)).toEqual(rows);
});
