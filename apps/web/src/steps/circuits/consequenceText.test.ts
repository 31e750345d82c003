import { describe, expect, it } from "vitest";
import { consequenceText } from "./consequenceText.ts";

const counts = { stop: 1, mend: 0, advise: 4, notProven: 0 };

describe("what a change leads to", () => {
  it("names the counts that change, worst first, and no other", () => {
    const after = { ...counts, stop: 0, advise: 5 };
    const text = consequenceText({ ok: true, before: counts, after, verdict: "fit" });
    expect(text).toBe("stop 1 → 0, advise 4 → 5");
    expect(consequenceText({ ok: true, before: counts, after: counts, verdict: "stop" })).toBe(
      "no count changes",
    );
  });

  it("says why it cannot be done", () => {
    const refusals = [
      { code: "x", pointer: "", line: null, found: "", message: "no such pin.", remedy: "" },
    ];
    expect(consequenceText({ ok: false, refusals })).toBe("cannot be done: no such pin.");
  });
});
