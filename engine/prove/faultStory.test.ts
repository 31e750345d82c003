import { readFileSync } from "node:fs";
import { describe, expect, test } from "vitest";
import { adiabaticEndC } from "../heat/index.ts";
import { readJob } from "../job/index.ts";
import { type OperateRequest, operateJob } from "../operate/index.ts";
import { conductorsOf, routeJob } from "../route/index.ts";
import { faultStory, limitAtC } from "./faultStory.ts";
import { wireLumps } from "./wireLumps.ts";
import { wireTemperatures } from "./wireTemperatures.ts";

const read = readJob(readFileSync("demos/accessory-five-wires.json", "utf8"));
if (!read.ok) throw new Error("the demo does not read");
const { job } = read;
const routed = routeJob(job);
const conductors = conductorsOf(job, routed);

function solved(request: OperateRequest) {
  const answer = operateJob(job, conductors, request);
  if (!answer.ok) throw new Error(answer.refusals[0]?.message);
  return answer.solution;
}
const set = { SW: job.parts.flatMap((p) => (p.kind === "switch" ? p.positions : [])).at(-1)!.id };
const healthy = solved({ set });
const storyOf = (ohm: number) =>
  faultStory({ conductors, routed }, healthy, solved({ set, short: [{ a: "SW.IN", ohm }] }));

describe("a short behind the only fuse", () => {
  const story = storyOf(0.1);

  test("the fuse goes between its soonest and its latest, and nothing flows through the short's feed afterwards", () => {
    expect(story.first?.part).toBe("F1");
    const [whole, opened] = story.stages;
    expect(whole).toEqual({ opened: null, soonestS: 0, latestS: 0 });
    expect(opened!.soonestS).toBeLessThan(opened!.latestS!);
    for (const { currents } of story.wires) {
      expect(currents[0]!.currentA).toBeGreaterThan(10);
      expect(currents[1]!.currentA).toBeLessThan(1e-3);
    }
  });

  test("a wire begins where it was before, is hottest when the fuse goes, and loses no heat it was not given", () => {
    const [worst] = story.wires;
    const first = worst!.points[0]!;
    expect(first.temperatureC).toBeGreaterThanOrEqual(worst!.startC);
    expect(worst!.peakAtS).toBeCloseTo(story.stages[1]!.latestS!, 9);
    // All heat kept is the upper bound: the lump may only lie under it.
    const placed = wireLumps(conductors, routed, () => 0)(worst!.wire)[0]!;
    const keptC = adiabaticEndC({
      ohmPerM20: placed.lump.ohmPerM20,
      alphaPerK: placed.lump.alphaPerK,
      startC: worst!.startC,
      capacityJPerMK: placed.metalJPerMK,
      i2tA2s: worst!.currents[0]!.currentA ** 2 * worst!.peakAtS,
    });
    expect(worst!.peakC).toBeLessThanOrEqual(keptC + 1e-6);
    expect(worst!.peakC).toBeGreaterThan(worst!.startC);
  });

  test("more ohms in the short: less current, later to open", () => {
    const weaker = storyOf(0.4);
    expect(weaker.first!.currentA).toBeLessThan(story.first!.currentA);
    expect(weaker.first!.opensMaxS!).toBeGreaterThan(story.first!.opensMaxS!);
  });
});

test("without a fault there is nothing to tell: no wire is loaded more than before", () => {
  const story = faultStory({ conductors, routed }, healthy, healthy);
  expect([story.wires, story.first?.opensMaxS ?? null]).toEqual([[], null]);
});

test("the limit falls with the time it is borne", () => {
  const limits = { shortS: 5, shortC: 160, longS: 3600, longC: 120, foreverC: 105 };
  expect([5, 6, 3601].map((s) => limitAtC(limits, s))).toEqual([160, 120, 105]);
});

test("a wire without current settles at its air, one with current above", () => {
  const rows = wireTemperatures({ conductors, routed }, healthy.wires);
  const off = wireTemperatures({ conductors, routed }, solved({}).wires);
  for (const row of off) expect(row.temperatureC).toBeCloseTo(row.ambientC, 3);
  const loaded = healthy.wires.reduce((a, b) =>
    Math.abs(a.currentA) > Math.abs(b.currentA) ? a : b,
  );
  const row = rows.find(({ wire }) => wire === loaded.wire)!;
  expect(row.temperatureC).toBeGreaterThan(row.ambientC + 0.5);
});
