import type { MergedFirst, ProofWork, SecondPart } from "./provePart.ts";
import type { Coverage } from "./proveResult.ts";
import { shortPlan } from "./shortPlan.ts";
import { combinationsOf } from "./stateSpace.ts";

/** Screened figures count only where they are this many times further from a limit than the screening was off in this run. */
const SCREEN_MARGIN_TIMES = 5;
/** Battery full, weak, and held at the regulator's volts; air at the usual temperature and cold. */
const BATTERY_CASES = 3;
const TEMPERATURE_CASES = 2;

/** What was looked at, what was not, and why that is enough. */
export function coverageOf(
  { plan, places }: ProofWork,
  first: MergedFirst,
  seconds: readonly SecondPart[],
  seed: number,
): Coverage {
  const { space, solver, states, input } = plan;
  const shorts = shortPlan(plan);
  const sum = (of: (part: SecondPart) => number): number =>
    seconds.reduce((total, part) => total + of(part), 0);
  const errorPercent = Math.max(0, ...seconds.map(({ screened }) => screened.largestErrorPercent));
  const openNames = places.reduce((total, { names }) => total + names.length, 0);
  const excludedCount = space.excluded.reduce((total, { count }) => total + count, 0);
  return {
    ...spaceCovered(plan),
    productCount: space.productCount,
    excluded: space.excluded,
    statesSolved: states.length,
    relayTwiceSettled: first.solve.twiceSettledCount,
    opens: openNames,
    shortsToEarth: shorts.toEarthCount,
    shortsToNeighbour: shorts.toNeighbourCount,
    resistancesPerShort: shorts.shortOhm.length,
    batteryCases: plan.charged === null ? BATTERY_CASES - 1 : BATTERY_CASES,
    temperatureCases: TEMPERATURE_CASES,
    faultStatesCovered:
      (space.productCount - Math.min(excludedCount, space.productCount)) *
      (openNames + shorts.pairs.length * shorts.shortOhm.length),
    screened: sum(({ screened }) => screened.screenedCount),
    solvedInFull: first.solve.solvedCount + sum(({ solve }) => solve.solvedCount),
    largestKclResidualA: Math.max(
      first.solve.largestKclResidualA,
      solver.tally.largestKclResidualA,
      ...seconds.map(({ solve }) => solve.largestKclResidualA),
    ),
    largestScreenErrorPercent: errorPercent,
    screenMarginPercent: SCREEN_MARGIN_TIMES * errorPercent,
    neighbourScreenErrorPercent: Math.max(
      0,
      ...seconds.map(({ screened }) => screened.neighbourErrorPercent),
    ),
    relayMovedByShortCount: sum(({ screened }) => screened.relayMovedCount),
    reductions: [
      {
        decision: "0010",
        removedCount: Math.max(0, space.productCount - excludedCount - states.length),
      },
      { decision: "0011", removedCount: openNames - places.length + first.straySkippedCount },
      { decision: "0012", removedCount: input.conductors.size },
      {
        decision: "0013",
        removedCount: sum(({ screened }) => screened.screenedCount - screened.confirmedCount),
      },
    ],
    seed,
  };
}

function spaceCovered({ space, still }: ProofWork["plan"]): Pick<Coverage, "switches" | "groups"> {
  return {
    switches: space.variables.map(({ id, driven, positions }) => ({
      part: id,
      driven: driven ?? "flasher",
      positions: positions.length,
    })),
    groups: still.groups
      .filter(({ variables }) => variables.length > 0)
      .map(({ variables, context }) => ({
        switches: variables,
        given: context,
        count: combinationsOf(space.variables, variables).length,
      })),
  };
}
