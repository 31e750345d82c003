import { expect, test } from "vitest";
import type { Consequence } from "../../engine/engineApi.ts";
import { consequenceText, isBetter, operationOf } from "./consequenceText.ts";
import type { SpokenFinding } from "./findingRows.ts";

const counts = { stop: 2, mend: 1, advise: 4, notProven: 0 };
const tried = (after: Partial<typeof counts>): Consequence => ({
  ok: true,
  before: counts,
  after: { ...counts, ...after },
  verdict: "not-proven",
});

test("only what changes is told, and the verdict then", () => {
  expect(consequenceText(tried({ stop: 0, mend: 2 }))).toBe(
    "stop 2 → 0 · mend 1 → 2 · verdict then: not proven",
  );
  expect(consequenceText(tried({}))).toBe("the check's counts stay · verdict then: not proven");
});

test("what cannot be done says why", () => {
  const refusal = {
    code: "x",
    pointer: "",
    line: null,
    found: "",
    message: "No such make.",
    remedy: "",
  };
  expect(consequenceText({ ok: false, refusals: [refusal] })).toBe("cannot be done: No such make.");
  expect(consequenceText(null)).toBe("being tried");
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
