import { type Job, presentWires } from "../job/index.ts";
import type { JobNetwork } from "../operate/index.ts";
import { type Conductors, conductorsOf, type MakeFields, type Routed } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import { answered } from "./answered.ts";
import type { DesignCurrents, DrawnByGroup } from "./designCurrents.ts";
import { jobCurrents } from "./jobCurrents.ts";
import { type Limited, limitedWay, withChosen } from "./loadSizing.ts";
import type { FitQuestion } from "./makeFits.ts";
import { type RateKept, rateKept } from "./rateKept.ts";
import type { SizedJob, Sizing } from "./sizedJob.ts";
import { type Duty, sizesForDrop } from "./sizesForDrop.ts";
import { isSizedSo, sizingOf } from "./sizingOf.ts";
import { makesByWire, stockOf } from "./stockMakes.ts";
import { wirePlacesOf } from "./wirePlaces.ts";

/** The fuses that guard each wire, as protection finds them; absent wires are guarded by none or not looked at yet. */
export type Guards = ReadonlyMap<string, { readonly sumA: number }>;

/**
 * Chooses the make of every wire nobody fixed: the least copper of the stock that is strong enough, carries its current in
 * its place, suits the fuses that guard it, and keeps every load within the wires' share of its volt-drop limit, feed and
 * return together. Contacts have their own share; where they exceed it no copper is added for them.
 *
 * Currents come first and from above (`designCurrents`), so one pass is enough for given guards.
 *
 * @param known  what is known beforehand, each the same as would be found here.
 */
export function sizeJob(
  job: Job,
  routed: Routed,
  guards: Guards = new Map(),
  known: SizingKnown = {},
): SizedJob {
  const trial = known.trial ?? conductorsOf(job, routed);
  const currents = known.currents ?? jobCurrents(job, trial, known.drawn, known.networkOf);
  const rate = known.rate ?? rateKept();
  const loads = currents.ways.map((way) => limitedWay(job, trial, way));
  const cables = starterCables(loads);
  const makes = makesByWire(job, stockOf(job), cables);
  const ask = fitQuestions({ job, routed, trial, guards, currents, rate });
  const asked = new Map(
    [...makes].map(([wire, all]) => [wire, answered(all, ask(wire), known.asked?.get(wire))]),
  );
  const fitting = new Map([...asked].map(([wire, { fits }]) => [wire, fits]));
  const solve = (duty: Duty, from: typeof fitting) =>
    sizesForDrop({ trial, currents, loads, makes: from, duty });
  const cranked = solve("cranking", fitting);
  const leastMm2 = (wire: string): number =>
    cables.has(wire) ? cranked.chosen.get(wire)!.areaMm2 : 0;
  const calm = solve(
    "calm",
    new Map(
      [...fitting].map(([wire, all]) => [wire, droppable(all, leastMm2(wire), cables.has(wire))]),
    ),
  );
  const sizes = new Map(
    presentWires(job)
      .filter(({ size }) => size === undefined)
      .map(({ id }) => [id, calm.chosen.get(id)!.makeId]),
  );
  const conductors = conductorsOf(job, routed, sizes);
  const questionOf = (wire: string): FitQuestion => asked.get(wire)!.question;
  const chosen = { conductors, currents, makes, questionOf };
  const sizingFor = (id: string): Sizing => {
    const isAskedAlike = asked.get(id)!.fits === known.asked?.get(id)?.fits;
    const was = isAskedAlike ? known.sizing?.get(id) : undefined;
    return was !== undefined && isSizedSo(was, chosen) ? was : sizingOf(id, chosen);
  };
  return {
    conductors,
    sizes,
    sizing: new Map(presentWires(job).map(({ id }) => [id, sizingFor(id)])),
    asked,
    loads: loads.map((load, i) =>
      withChosen(load, { conductors, currents, unmet: cranked.unmet.has(i) || calm.unmet.has(i) }),
    ),
    copperG: calm.copperG,
    leastCopperG: calm.leastCopperG,
    exact: cranked.exact && calm.exact,
    trial,
    currents,
    rate,
  };
}

/** Answers that do not depend on what is asked of this job alone. */
export type SizingKnown = Partial<Pick<SizedJob, "trial" | "currents" | "rate">> & {
  /** Answers of an earlier sizing: each is taken where the same is asked again. */
  readonly asked?: SizedJob["asked"];
  readonly sizing?: SizedJob["sizing"];
  /** Of the same switches, states and joins, but maybe other copper and fuses. */
  readonly drawn?: readonly DrawnByGroup[];
  /** The network of the job: see withCopper. */
  readonly networkOf?: () => JobNetwork;
};

const starterCables = (loads: readonly Limited[]): ReadonlySet<string> =>
  new Set(
    loads.filter(({ duty }) => duty === "cranking").flatMap(({ feed, back }) => [...feed, ...back]),
  );

function fitQuestions(from: {
  readonly job: Job;
  readonly routed: Routed;
  readonly trial: Conductors;
  readonly guards: Guards;
  readonly currents: DesignCurrents;
  readonly rate: RateKept;
}): (wire: string) => FitQuestion {
  const { job, routed, trial, guards, currents, rate } = from;
  const continuousA = (id: string): number => currents.continuous.get(id)?.currentA ?? 0;
  const placesOf = wirePlacesOf(job, routed, trial, continuousA);
  return (wire) => ({
    wire,
    places: placesOf(wire),
    continuousA: continuousA(wire),
    crankingA: currents.cranking.get(wire)?.currentA ?? 0,
    fuseSumA: guards.get(wire)?.sumA ?? null,
    conductors: trial,
    neighbourA: continuousA,
    rate,
  });
}

/** Of the makes that fit, those volt drop may choose among: a loom wire grows no further for drop alone than is stated. */
function droppable(
  fitting: readonly MakeFields[],
  leastMm2: number,
  isCable: boolean,
): readonly MakeFields[] {
  const mostMm2 = isCable ? Number.POSITIVE_INFINITY : dropLargestMm2();
  const enough = fitting.filter(({ areaMm2 }) => areaMm2 >= leastMm2);
  return enough.filter(({ areaMm2 }, i) => i === 0 || areaMm2 <= mostMm2);
}

/** Counted copper that still counts as the stated size, mm². */
const dropLargestMm2 = (): number =>
  figure("sizeRules", "drop-largest", "value").value /
  figure("sizeRules", "mechanical-trade", "value").value;
