import { expect, test } from "vitest";
import type { Consequence } from "../../engine/engineApi.ts";
import type { SpokenFinding } from "./findingRows.ts";
import { isBetter, operationOf } from "./operationOf.ts";

const counts = { stop: 2, mend: 1, advise: 4, notProven: 0 };
const tried = (after: Partial<typeof counts>): Consequence => ({
  ok: true,
  before: counts,
  after: { ...counts, ...after },
  verdictBefore: "not-proven",
  verdict: "not-proven",
  sizeCount: 0,
  fuseCount: 0,
  price: null,
});

test("several changes are one act, words alone are none", () => {
  const finding = { subject: { kind: "wire", id: "W1" } } as SpokenFinding;
  const set = { op: "set", list: "parts", id: "F1", path: ["ratingA"], value: 5 } as const;
  const remedy = (change: readonly unknown[]) => ({ change, cures: null, newNumbers: {} });
  expect(operationOf(remedy([]), finding)).toBeNull();
  expect(operationOf(remedy([set]), finding)).toEqual(set);
  expect(operationOf(remedy([set, set]), finding)).toMatchObject({
    op: "batch",
    operations: [set, set],
  });
});

test("better is fewer of the gravest kind that changes; a stop bought with mends is not", () => {
  expect(isBetter(tried({ stop: 1, mend: 5 }))).toBe(true);
  expect(isBetter(tried({ stop: 3, mend: 0 }))).toBe(false);
  expect(isBetter(tried({ mend: 0 }))).toBe(true);
  expect(isBetter(tried({ advise: 0 }))).toBe(false);
});
