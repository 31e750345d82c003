import type { WorkingStep } from "../messages/index.ts";
import type { Conductors, MakeFields } from "../route/index.ts";
import type { DesignCurrent, DesignCurrents } from "./designCurrents.ts";
import { type FitQuestion, mechanicalLeastMm2, shortfallsOf } from "./makeFits.ts";
import type { Sizing } from "./sizedJob.ts";

/** What has been chosen, and what it was chosen from. */
export interface Chosen {
  readonly conductors: Conductors;
  readonly currents: DesignCurrents;
  readonly makes: ReadonlyMap<string, readonly MakeFields[]>;
  readonly questionOf: (wire: string) => FitQuestion;
}

const NONE: DesignCurrent = { currentA: 0, state: null };

/** The size of a wire with what governed it, its rating at the worst place on its way, and the working. */
export function sizingOf(wire: string, chosen: Chosen): Sizing {
  const { makeId, sizedBy } = chosen.conductors.get(wire)!;
  const question = chosen.questionOf(wire);
  const makes = chosen.makes.get(wire)!;
  const at = makes.findIndex((make) => make.makeId === makeId);
  const make = makes[at]!;
  const rated = question.places.map(({ at: place, ambientC, bundle, sleeved }) => ({
    place,
    rating: question.rate({ makeId, ambientC, bundle, sleeved }),
  }));
  const worst = rated.reduce((least, one) =>
    one.rating.currentA < least.rating.currentA ? one : least,
  );
  const continuous = chosen.currents.continuous.get(wire) ?? NONE;
  const cranking = chosen.currents.cranking.get(wire) ?? NONE;
  return {
    wire,
    makeId,
    sizedBy,
    governedBy: sizedBy === "person" ? "person" : governedBy(makes[at - 1], question),
    continuous,
    cranking,
    rating: worst.rating,
    ratingAt: worst.place,
    shortOf: shortfallsOf(make, question),
    working: [currentStep(continuous), mechanicalStep(make), ...worst.rating.working],
  };
}

/** An earlier sizing of a wire of which the same was asked: it stands if the same was chosen, at the same currents. */
export function isSizedSo(was: Sizing, { conductors, currents }: Chosen): boolean {
  const { makeId, sizedBy } = conductors.get(was.wire)!;
  return (
    was.makeId === makeId &&
    was.sizedBy === sizedBy &&
    isSameCurrent(was.continuous, currents.continuous.get(was.wire)) &&
    isSameCurrent(was.cranking, currents.cranking.get(was.wire))
  );
}

const isSameCurrent = (was: DesignCurrent, is: DesignCurrent | undefined): boolean =>
  was === is || (was.state === (is?.state ?? null) && was.currentA === (is?.currentA ?? 0));

/** Why not the next smaller: strength first, since that is the trade's floor; then current, then fuse; else volt drop. */
function governedBy(smaller: MakeFields | undefined, question: FitQuestion): Sizing["governedBy"] {
  if (smaller === undefined) return "stock";
  const short = shortfallsOf(smaller, question);
  for (const reason of ["mechanical", "rating", "fuse"] as const) {
    if (short.includes(reason)) return reason;
  }
  return "drop";
}

function currentStep({ currentA, state }: DesignCurrent): WorkingStep {
  const where =
    state === null
      ? "what the generator sends, or nothing"
      : Object.entries(state.positions)
          .map(([part, position]) => `${part}=${position}`)
          .join(" ");
  return {
    name: "design current: the largest sum over states, nothing lost on the way",
    equation: "I = sum of the loads fed through the wire",
    inputs: [{ name: "state", value: where, unit: "", from: "switch positions" }],
    value: currentA,
    unit: "A",
  };
}

function mechanicalStep(make: MakeFields): WorkingStep {
  return {
    name: "copper, counted strand by strand",
    equation: "A = N x pi/4 x d^2, at least the trade's smallest",
    inputs: [
      { name: "N", value: make.strandCount, unit: "count", from: `tables/wires ${make.makeId}` },
      { name: "d", value: make.strandDiameterMm, unit: "mm", from: `tables/wires ${make.makeId}` },
      { name: "least", value: mechanicalLeastMm2(), unit: "mm2", from: "tables/sizeRules" },
    ],
    value: make.areaMm2,
    unit: "mm2",
  };
}
