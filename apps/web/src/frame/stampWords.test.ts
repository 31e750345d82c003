import type { CheckResult } from "@copperwright/engine";
import { describe, expect, test } from "vitest";
import { stampWords } from "./stampWords.ts";

const result = (verdict: CheckResult["verdict"]): CheckResult =>
  ({
    verdict,
    counts: {
      stop: verdict === "stop" ? 2 : 0,
      mend: verdict === "mend" ? 3 : 0,
      advise: 1,
      notProven: 0,
    },
    findings: [],
  }) as unknown as CheckResult;

describe("the stamp", () => {
  test("never says fit where the full proof does not", () => {
    for (const verdict of ["mend", "stop", "not-proven"]) {
      expect(stampWords(result("fit"), verdict).verdict).toBe(verdict);
    }
  });

  test("never lets a good proof hide what the check found", () => {
    expect(stampWords(result("stop"), "fit").word).toBe("stop 2");
    expect(stampWords(result("mend"), "not-proven").verdict).toBe("not-proven");
    expect(stampWords(result("stop"), "mend").verdict).toBe("stop");
  });

  test("says proven only where the proof of this very job is fit", () => {
    expect(stampWords(result("fit"), null).note).toBe(null);
    expect(stampWords(result("fit"), "fit").note).toBe("proven in every state");
  });
});
