import fc from "fast-check";
import { expect, test } from "vitest";
import type { Figure } from "../messages/index.ts";
import { findingOf } from "./findingOf.ts";
import { countsOf, verdictOf, withAcceptances } from "./verdictOf.ts";

const figure = (confidence: Figure["confidence"]): Figure => ({
  value: 1,
  unit: "A",
  table: "t",
  row: "r",
  source: "s",
  place: "p",
  confidence,
});
const subject = { kind: "wire", id: "W1" } as const;

test("any stop, then not proven, then mend, else fit", () => {
  const count = fc.integer({ min: 0, max: 3 });
  fc.assert(
    fc.property(count, count, count, count, (stop, notProven, mend, advise) => {
      const verdict = verdictOf({ stop, notProven, mend, advise });
      const expected = stop ? "stop" : notProven ? "not-proven" : mend ? "mend" : "fit";
      expect(verdict).toBe(expected);
    }),
  );
});

test("a stop that rests on memory alone is not proven; one with another ground stands", () => {
  const limit = figure("memory");
  const code = "fuse-over-wire";
  expect(findingOf({ code, severity: "stop", subject, limit }).severity).toBe("not-proven");
  const grounded = findingOf({ code, severity: "stop", subject, limit, restsOnFigures: false });
  expect([grounded.severity, grounded.leansOnMemory]).toEqual(["stop", true]);
  const seen = findingOf({ code, severity: "stop", subject, limit: figure("seen") });
  expect([seen.severity, seen.leansOnMemory, seen.acceptable]).toEqual(["stop", false, false]);
  expect(findingOf({ code, severity: "mend", subject, limit }).severity).toBe("mend");
});

test("what is accepted no longer counts; a stop cannot be", () => {
  const mend = findingOf({ code: "fuse-under-load", severity: "mend", subject });
  const stop = findingOf({ code: "fuse-bridged", severity: "stop", subject });
  const accept = (id: string, code: string) => ({
    id,
    code,
    subject: "W1",
    reason: "r",
    by: "b",
    date: "2026-01-10",
  });
  const findings = withAcceptances([mend, stop], {
    accepted: [accept("K1", "fuse-under-load"), accept("K2", "fuse-bridged"), accept("K3", "gone")],
  });
  expect(findings.map(({ code, accepted }) => [code, accepted?.by ?? null])).toEqual([
    ["fuse-under-load", "b"],
    ["fuse-bridged", null],
    ["accept-refused", null],
  ]);
  expect(countsOf(findings)).toEqual({ stop: 1, mend: 1, advise: 0, notProven: 0 });
});

test("an acceptance covers what it lists: a finding that has grown is told again, with what is new", () => {
  const one = { id: "K1", code: "colour-outside-scheme", subject: "W1", reason: "r", by: "b" };
  const by = { ...one, also: ["W2", "W3"], date: "2026-01-10" };
  const grown = (also: readonly string[]) =>
    withAcceptances(
      [findingOf({ code: "colour-outside-scheme", severity: "advise", subject, also })],
      { accepted: [by] },
    );
  expect(grown(["W2"]).map(({ accepted }) => accepted?.by)).toEqual(["b"]);
  expect(grown(["W2", "W3"]).map(({ accepted }) => accepted?.by)).toEqual(["b"]);
  const told = grown(["W2", "W4", "W5"]);
  expect(told.map(({ code, accepted, also }) => [code, accepted, also])).toEqual([
    ["colour-outside-scheme", null, ["W2", "W4", "W5"]],
    ["accept-outgrown", null, ["W4", "W5"]],
  ]);
});
