import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { applyOperation, readJob, resizeWire, setFuseRating } from "../../engine/job/index.ts";
import { checkJob } from "../../engine/judge/index.ts";

/**
 * S05: stop 21 W, horn 2.5 A and two 21 W indicators make 1.75 + 2.5 + 3.75 = 8.0 A; behind the fuse 1.0 mm2 thin wall at 16.5 A.
 * Window 8.0/0.8 = 10 to 16.5 A: of the standard ratings 10 and 15. With 0.5 mm2 (11 A) only 10.
 * Here on the accessory job, whose two lamps are set to draw 8.0 A together at test volts.
 */
test("S05: the window of a fuse reaches from its load to its weakest wire", () => {
  const path = new URL("../../demos/accessory-five-wires.json", import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error("refused");
  const window = (make: string) => {
    const applied = applyOperation(read.job, resizeWire({ wire: "W4", make }));
    if (!applied.ok) throw new Error("refused");
    const fuse = checkJob(applied.job).fuses.find((one) => one.fuse === "F1")!;
    expect(fuse.windowMinA).toBeCloseTo(fuse.worstLoadA / 0.8, 9);
    return fuse.windowMaxA;
  };
  expect(window("thin-1.0")).toBe(16.5);
  expect(window("thin-0.5")).toBe(11);
  const large = applyOperation(read.job, setFuseRating("F1", 20));
  if (!large.ok) throw new Error("refused");
  expect(checkJob(large.job).verdict).toBe("stop");
});
