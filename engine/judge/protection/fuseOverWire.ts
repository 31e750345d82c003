import { setFuseRating } from "../../job/index.ts";
import type { Figure, Finding, Remedy, WorkingStep } from "../../messages/index.ts";
import { type FuseReading, fuseReading, type Guard } from "../../protect/index.ts";
import { fuseHolds, type RateKept } from "../../size/index.ts";
import { fuseStandardRatings } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import { type FuseFacts, listA } from "../fuseFacts.ts";
import type { Design, Judge } from "../judge.ts";
import { listFigure, placeFigure } from "../wireLimit.ts";
import { deadShort } from "./deadShort.ts";
import { largerMake } from "./largerMake.ts";
import { splitRemedy } from "./splitRemedy.ts";

/** One wire behind a set of fuses that is too much for it. */
interface Excess {
  readonly wire: string;
  readonly guard: Guard;
  /** What the wire must stand for ever, A: the sum of the fuses, or the generator's ceiling where that is less. */
  readonly standsA: number;
  readonly how: "list" | "place" | "return";
}

const ROUNDING_RATIO = 1e-9;

/**
 * Every wire against the fuses that cut its sources: over the trade's list for one such wire, or over what it carries in
 * its bundle where the heat model does not hold 1.35 times the fuse either. One finding for each set of fuses.
 */
export const fuseOverWire: Judge = (design) => {
  const groups = new Map<string, Excess[]>();
  for (const excess of excesses(design)) {
    const key = `${excess.how} ${excess.guard.cut.join("+")}`;
    groups.set(key, [...(groups.get(key) ?? []), excess]);
  }
  return [...groups.values()].map((group) => findingOfGroup(design, group));
};

function excesses(design: Design): readonly Excess[] {
  const { rate } = design.sizing;
  const found: Excess[] = [];
  for (const [wire, guards] of design.protection.guards) {
    // Insulation that the air alone is too hot for is a finding of its own.
    if (listA(design, wire) === 0) continue;
    const worst = guards
      .filter((guard) => guard.sumA !== null)
      .map((guard) => ({ guard, standsA: standsA(guard) }))
      .sort((a, b) => b.standsA - a.standsA)[0];
    if (worst === undefined) continue;
    const { guard } = worst;
    const isOverList = worst.standsA > listA(design, wire) * (1 + ROUNDING_RATIO);
    if (isOverList) {
      found.push({ wire, ...worst, how: guard.via === null ? "list" : "return" });
    } else if (guard.via === null && !holds(design, wire, worst.standsA, rate)) {
      found.push({ wire, ...worst, how: "place" });
    }
  }
  return found;
}

const standsA = ({ sumA, ceilingA, sourceKind }: Guard): number =>
  sourceKind === "generator"
    ? Math.min(sumA ?? 0, ceilingA ?? Number.POSITIVE_INFINITY)
    : (sumA ?? 0);

function holds(design: Design, wire: string, sumA: number, rate: RateKept): boolean {
  const { conductors, ratings, worst } = design;
  const rating = ratings.get(wire)!;
  if (sumA <= rating.currentA) return true;
  return fuseHolds({
    make: conductors.get(wire)!,
    wire,
    places: rating.places,
    sumA,
    conductors,
    neighbourA: (id) => worst.conductors.get(id)?.currentA ?? 0,
    rate,
  });
}

const CODES = {
  list: "fuse-over-wire",
  place: "fuse-over-wire-in-loom",
  return: "fuse-over-return-wire",
} as const;

function findingOfGroup(design: Design, group: readonly Excess[]): Finding {
  const { conductors, ratings } = design;
  const worst = group.reduce((least, one) =>
    limitOf(design, one).value < limitOf(design, least).value ? one : least,
  );
  const { wire, guard, how } = worst;
  const readings = guard.cut.map((id) => readingOf(design, id));
  const limit = limitOf(design, worst);
  const lowA = readings.reduce((sum, { lowA: one }) => sum + one, 0);
  const conductor = conductors.get(wire)!;
  const isParallel = guard.cut.length > 1;
  // The list says so, and so does the heat of the copper: two grounds, of which only one may be remembered.
  const heatAgrees = worst.standsA > ratings.get(wire)!.modelA;
  const isSure = lowA > limit.value;
  const severity = how !== "list" ? "mend" : isSure || heatAgrees ? "stop" : "not-proven";
  const short = deadShort(design, wire, guard);
  return findingOf({
    code: how === "list" && isParallel ? "fuses-side-by-side" : CODES[how],
    severity,
    subject: { kind: "fuse", id: guard.cut[0]! },
    also: [...guard.cut.slice(1), ...group.map((one) => one.wire)],
    limit,
    figures: readings.flatMap(({ figures }) => figures),
    restsOnFigures: !heatAgrees,
    numbers: {
      wire,
      areaMm2: conductor.areaMm2,
      wireCount: group.length,
      sumA: worst.standsA,
      lowSumA: lowA < worst.standsA ? lowA : null,
      eitherWay:
        lowA < worst.standsA ? (isSure ? "it fails either way" : "by the lower it passes") : null,
      fuses: guard.cut.join(" and "),
      source: guard.source,
      via: guard.via,
      place: ratings.get(wire)!.place.at,
      bundleCount: ratings.get(wire)!.place.bundle.wireCount,
      loadedCount: ratings.get(wire)!.place.bundle.loadedCount,
      ...short.numbers,
    },
    working: [
      ...workingOf(worst, limit, readings),
      ...ratings.get(wire)!.working,
      ...short.working,
    ],
    remedies: isParallel ? [] : remediesOf(design, worst, group),
    reproduce: short.reproduce,
  });
}

const limitOf = (design: Design, { wire, how }: Excess): Figure =>
  how === "place" ? placeFigure(design, wire) : listFigure(design, wire);

function readingOf({ job }: Design, id: string): FuseReading {
  const fuse = job.parts.find((part) => part.id === id);
  if (fuse?.kind !== "fuse") throw new Error(`${id} guards a wire and is no fuse`);
  return fuseReading(fuse);
}

function workingOf(
  { wire, guard, standsA: sumA }: Excess,
  limit: Figure,
  readings: readonly FuseReading[],
): readonly WorkingStep[] {
  return [
    {
      name: `what may flow in ${wire} for ever`,
      equation: guard.cut.join(" + "),
      inputs: guard.cut.map((id, i) => ({
        name: id,
        value: readings[i]!.highA,
        unit: "A",
        from: `highest reading of the mark on ${id}`,
      })),
      value: sumA,
      unit: "A",
    },
    {
      name: "limit of the wire",
      equation: "as listed or reckoned",
      inputs: [{ name: "limit", value: limit.value, unit: limit.unit, from: limit.source }],
      value: limit.value,
      unit: limit.unit,
    },
  ];
}

function remediesOf(
  design: Design,
  { wire, guard, standsA: sumA }: Excess,
  group: readonly Excess[],
): readonly Remedy[] {
  const id = guard.cut[0]!;
  const facts = design.fuses.find(({ fuse }) => fuse.id === id);
  const suggestedA = facts?.choice?.suggestedA ?? null;
  const fuse: readonly Remedy[] =
    suggestedA === null || suggestedA >= sumA
      ? []
      : [
          {
            kind: "smaller-fuse",
            change: [setFuseRating(id, suggestedA)],
            cures: null,
            newNumbers: { suggestedA, loadA: facts!.worstLoadA },
          },
        ];
  const wireFuse = fuse.length > 0 || facts === undefined ? [] : fuseForWire(facts);
  const larger = largerMake(
    design,
    group.map((one) => one.wire),
    sumA,
  );
  // Where no smaller fuse carries the load the circuit can only be split, or its wire grow.
  const split = fuse.length > 0 ? null : splitRemedy(facts?.choice ?? null);
  const others = [larger, split].filter((one) => one !== null);
  return [
    ...fuse,
    ...wireFuse,
    ...others.map((one) => ({ ...one, newNumbers: { ...one.newNumbers, wire } })),
  ];
}

/** The largest standard fuse that suits the thinnest wire, though everything at once is more than it should carry. */
function fuseForWire({ fuse, weakestA, worstLoadA }: FuseFacts): readonly Remedy[] {
  const suits = fuseStandardRatings
    .filter(({ type }) => type === "blade")
    .map(({ ratedA }) => ratedA)
    .filter((ratedA) => weakestA !== null && ratedA <= weakestA);
  if (suits.length === 0) return [];
  const suggestedA = Math.max(...suits);
  const change = [setFuseRating(fuse.id, suggestedA)];
  return [
    { kind: "wire-fuse", change, cures: null, newNumbers: { suggestedA, loadA: worstLoadA } },
  ];
}
