import { readFileSync } from "node:fs";
import { readJob } from "../../engine/job/index.ts";
import { conversionOf, planJob } from "../../engine/judge/index.ts";
import {
  type RideStep,
  rideSteps,
  simulateRide,
  supplyAnswer,
  supplyModel,
} from "../../engine/supply/index.ts";

const DEMOS = ["aldreth-single", "minazuru-four", "brenzach-twin", "orivesta-enduro"] as const;
const RUNS = 5;

/** Supply questions of each demo, a week of riding, and how well its energy closes. */
export async function run() {
  return DEMOS.flatMap((name) => {
    const job = jobOf(name);
    const { job: planned, conductors } = planJob(job);
    const layS = best(() => supplyModel(planned, conductors));
    const model = supplyModel(planned, conductors);
    const steps = weekOf(model);
    const ride = () => simulateRide(model, model.battery!, steps, { startRatio: 0.75, parkedA: 0 });
    const { energy, rows, endPercent } = ride();
    return [
      { name: `${name}: laid out for supply questions`, value: 1000 * layS, unit: "ms" },
      {
        name: `${name}: a week, ten half-hours in town and ten on the road`,
        value: 1000 * best(ride),
        unit: "ms",
        target: 200,
      },
      { name: `${name}: steps of that week`, value: rows.length, unit: "" },
      { name: `${name}: charge after it`, value: endPercent, unit: "%" },
      {
        name: `${name}: energy not accounted for`,
        value: 100 * energy.residualRatio,
        unit: "%",
        target: 0.1,
      },
      {
        name: `${name}: every supply answer`,
        value: 1000 * best(() => supplyAnswer(planned, conductors)),
        unit: "ms",
      },
    ];
  }).concat([
    {
      name: "6 to 12 V planned, carried out and checked",
      value: 1000 * best(() => conversionOf(jobOf("aldreth-single"), { nominalV: 12 })),
      unit: "ms",
    },
  ]);
}

function jobOf(name: string) {
  const path = new URL(`../../demos/${name}.json`, import.meta.url);
  const read = readJob(readFileSync(path, "utf8"));
  if (!read.ok) throw new Error(`${name} does not read`);
  return read.job;
}

/** Ten working journeys each way: half an hour in town, half an hour mixed, parked between. */
function weekOf(model: ReturnType<typeof supplyModel>): readonly RideStep[] {
  const parked: RideStep = { durationS: 8 * 3600, speedRpm: 0, state: null };
  const town = rideSteps(model, "town", 1800)!;
  const mixed = rideSteps(model, "mixed", 1800)!;
  return Array.from({ length: 10 }, () => [...town, parked, ...mixed, parked]).flat();
}

/** Shortest of a few runs, s: what the machine does when nothing else holds it up. */
function best(work: () => unknown): number {
  let leastS = Number.POSITIVE_INFINITY;
  for (let k = 0; k < RUNS; k++) {
    const before = performance.now();
    work();
    leastS = Math.min(leastS, (performance.now() - before) / 1000);
  }
  return leastS;
}
