import { expect, test } from "vitest";
import type { Consequence } from "../engine/engineApi.ts";
import { consequenceText } from "./consequenceText.ts";

type Tried = Extract<Consequence, { ok: true }>;

const counts = { stop: 2, mend: 1, advise: 4, notProven: 0 };
const tried = (after: Partial<typeof counts>, more: Partial<Tried> = {}): Consequence => ({
  ok: true,
  before: counts,
  after: { ...counts, ...after },
  verdictBefore: "stop",
  verdict: "not-proven",
  sizeCount: 0,
  fuseCount: 0,
  price: null,
  ...more,
});

test("only what changes is told, and the verdict then", () => {
  expect(consequenceText(tried({ stop: 0, mend: 2 }))).toBe(
    "stop 2 → 0 · mend 1 → 2 · verdict then: not proven",
  );
  expect(consequenceText(tried({}, { verdict: "stop" }))).toBe(
    "the check's counts stay · verdict stays: stop",
  );
});

test("sizes, fuses and price stand between the counts and the verdict", () => {
  const price = { currency: "GBP", differencePrice: 0.14, unpriced: [] };
  const text = consequenceText(tried({ stop: 0 }, { sizeCount: 2, fuseCount: 1, price }));
  expect(text).toContain("stop 2 → 0 · 2 wires of another size · 1 fuse of another rating · +");
  expect(text).toMatch(/\+\D*0[.,]14/);
  const cheaper = { ...price, differencePrice: -3 };
  expect(consequenceText(tried({}, { price: cheaper }))).toMatch(/\u2212\D*3[.,]00/);
  const same = { ...price, differencePrice: 0 };
  expect(consequenceText(tried({}, { price: same }))).toContain("costs the same");
});

test("a price nobody can tell is not told as nought", () => {
  const price = { currency: "GBP", differencePrice: null, unpriced: ["3 mm² wire", "a fuse"] };
  expect(consequenceText(tried({}, { price }))).toContain(
    "price not known: 3 mm² wire and 1 more not in the list",
  );
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
