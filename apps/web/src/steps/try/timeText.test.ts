import { expect, test } from "vitest";
import { timeText } from "./timeText.ts";

test("time is said in the unit a hand would choose", () => {
  const said = [0.004, 0.05, 0.25, 1.5, 90, 600, 7200].map((s) => timeText(s).replace(/\s/g, " "));
  expect(said).toEqual(["4.0 ms", "50 ms", "0.25 s", "1.5 s", "90 s", "10 min", "2.0 h"]);
});
