import { expect, test } from "vitest";
import { conductorsOf, routeJob } from "../route/index.ts";
import { jobAt } from "./sampleModel.fixture.ts";
import { supplyAnswer } from "./supplyAnswer.ts";

const MACHINES = ["aldreth-single", "minazuru-four", "brenzach-twin", "orivesta-enduro"] as const;

test.each(MACHINES)("%s: what a screen draws is plain data, whole and in order", (name) => {
  const job = jobAt(`demos/${name}.json`);
  const answer = supplyAnswer(job, conductorsOf(job, routeJob(job)));
  // Survives being sent to a page: no map, no missing field, no number that is none.
  expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  for (const { curve } of answer.balances) {
    for (const [k, point] of curve.entries()) {
      if (k > 0) expect(point.speedRpm).toBeGreaterThan(curve[k - 1]!.speedRpm);
    }
  }
  for (const { rows } of answer.rides) {
    for (const [k, row] of rows.entries()) {
      if (k > 0) expect(row.timeS).toBeGreaterThan(rows[k - 1]!.timeS);
    }
  }
  const falls = [answer.lampFall, ...(answer.cranking?.rows ?? [])].flatMap((one) =>
    one === null ? [] : [one],
  );
  // The enduro's headlamp never meets the battery, and it is kicked over.
  if (name !== "orivesta-enduro") expect(falls.length).toBeGreaterThan(0);
  for (const { fall, postsV } of falls) {
    // Steps beyond the battery's own resistance add up to what its posts stand at: Kirchhoff, to the millivolts left out as too small.
    const sumV = fall.filter(({ side }) => side !== "battery").reduce((v, one) => v + one.dropV, 0);
    expect(Math.abs(sumV - postsV)).toBeLessThan(0.01);
  }
});
