import { batteriesOf, type Job, type PartOf } from "../../job/index.ts";
import { openCircuitV, restPositions } from "../../operate/index.ts";
import { type Figure, figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

type Battery = PartOf<"battery">;

/**
 * A battery that nothing guards from its generator: no regulator and no zener, and at the fastest speed stated more goes into it than it takes.
 * An open battery boils and wants water, which is advice; a sealed one vents and one of lithium burns, which is not.
 */
export const overcharges: Judge = (design) => {
  const { job, compiled } = design;
  const [first] = batteriesOf(job);
  const isZenered = job.parts.some((part) => part.kind === "regulator" && part.type === "zener");
  if (first === undefined || isZenered) return [];
  return compiled.jobNetwork.sources.flatMap((source) => {
    if (source.line === null || source.setV !== null) return [];
    const speedRpm = fastestOf(job, source.generator);
    const most = mostCharge(design, speedRpm);
    if (most === null) return [];
    const { battery } = first;
    const limit = limitOf(job, battery);
    const openV = openCircuitV(source.line, speedRpm);
    const mostA = limit.unit === "V" ? LEAST_A : limit.value * battery.capacityAh.value;
    if (most.currentA <= mostA || (limit.unit === "V" && openV <= limit.value)) return [];
    return [
      findingOf({
        code: battery.chemistry === "flooded" ? "battery-boils" : "battery-unguarded",
        severity: battery.chemistry === "flooded" ? "advise" : "mend",
        subject: { kind: "part", id: battery.id },
        also: [source.generator],
        limit,
        numbers: {
          generator: source.generator,
          chargeA: most.currentA,
          capacityAh: battery.capacityAh.value,
          speedRpm,
          stateName: most.name,
          openV,
        },
      }),
    ];
  });
};

/** Less does a battery no harm, A. */
const LEAST_A = 0.05;

/** Largest current into the battery over the named states of riding, or with everything at rest where none is named. */
function mostCharge(
  { job, compiled }: Design,
  speedRpm: number,
): { readonly name: string; readonly currentA: number } | null {
  const emf = compiled.jobNetwork.elements.findIndex(({ kind }) => kind === "emf");
  if (emf < 0 || speedRpm === 0) return null;
  const rest = restPositions(job, "running");
  const named = job.states.filter(({ engine }) => engine?.mode === "running");
  const states = [
    ...named.map(({ name, positions }) => ({ name, positions: { ...rest, ...positions } })),
    ...(named.length === 0 ? [{ name: "everything at rest", positions: rest }] : []),
  ];
  const charges = states.flatMap(({ name, positions }) => {
    const solution = compiled.solve({ positions, engine: { mode: "running", speedRpm } });
    return solution.converged ? [{ name, currentA: solution.elementA[emf]! }] : [];
  });
  return charges.toSorted((a, b) => b.currentA - a.currentA)[0] ?? null;
}

/** What an open battery takes over its capacity (remembered: advice rests on it), or the volts a sealed one is held under. */
function limitOf({ supply }: Job, { chemistry }: Battery): Figure {
  if (chemistry === "flooded") return figure("batteryRules", "bulk-flooded", "value");
  const row = chemistry === "lifepo4" ? "lithium-most" : "agm-high";
  const at12V = figure("regulators", row, "value");
  return { ...at12V, value: (at12V.value * supply.nominalV) / 12 };
}

const fastestOf = (job: Job, generator: string): number =>
  Math.max(
    0,
    ...job.parts.flatMap((part) =>
      part.kind === "generator" && part.id === generator
        ? part.windings
            .filter(({ use }) => use !== "lighting")
            .flatMap(({ points }) => (points ?? []).map(({ speedRpm }) => speedRpm))
        : [],
    ),
  );
