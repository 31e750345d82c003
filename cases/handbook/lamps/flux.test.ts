import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { type Job, readJob } from "../../../engine/job/index.ts";
import { operateJob } from "../../../engine/operate/index.ts";
import { conductorsOf, routeJob } from "../../../engine/route/index.ts";
import { numberIn, readRows } from "../heat/readRows.ts";

const accessory = new URL("../../../demos/accessory-five-wires.json", import.meta.url);

function readAccessory(): Job {
  const read = readJob(readFileSync(accessory, "utf8"));
  if (!read.ok) throw new Error("refused");
  return read.job;
}

/** Volts and relative light of the lit lamps with the battery at some volts. */
function lampsAt(job: Job, emfV: number) {
  const set = Object.fromEntries(
    job.parts.flatMap((part) =>
      part.kind === "switch" ? [[part.id, part.positions.at(-1)!.id]] : [],
    ),
  );
  const answer = operateJob(job, conductorsOf(job, routeJob(job)), { set, battery: { emfV } });
  if (!answer.ok) throw new Error(JSON.stringify(answer.refusals));
  return answer.solution.lamps;
}

// The published law is of ratios, so a lamp of ours is read at any two volts: its light at the one over its light at the
// other, raised to how many such ratios lie between the published volts, must be the published loss of light.
describe("light of a lamp at other volts, as printed", () => {
  const job = readAccessory();
  const [low, high] = [10.5, 13.5].map((emfV) => lampsAt(job, emfV)[0]!);
  test.each(readRows("../lamps/flux"))("$id: $expectedLm lm at $atV V ($source)", (row) => {
    expect(low!.v).toBeGreaterThan(8);
    const steps =
      Math.log(numberIn(row, "atV") / numberIn(row, "ratedV")) / Math.log(low!.v / high!.v);
    const lightLm = numberIn(row, "ratedLm") * (low!.relativeLight / high!.relativeLight) ** steps;
    const offLm = Math.abs(lightLm - numberIn(row, "expectedLm"));
    expect(offLm).toBeLessThanOrEqual(numberIn(row, "toleranceLm"));
  });
});
