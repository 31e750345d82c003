import { beforeAll, describe, expect, test } from "vitest";
import { type Compared, compareState, twoAtATime } from "./compareState.ts";
import {
  conductingBases,
  conducts,
  drawNear,
  drawState,
  machines,
  seededRatios,
} from "./drawStates.ts";

const SEED = 20251125;
const STATE_COUNT = 279;
const DIODE_STATE_COUNT = 36;
/** The contract's agreement. */
const AGREED_V = 1e-6;
/** A battery or generator giving or taking this is a source. */
const GIVING_A = 0.1;

let compared: readonly Compared[] = [];

beforeAll(async () => {
  const all = machines();
  const ratio = seededRatios(SEED);
  const drawn = Array.from({ length: STATE_COUNT }, (_, k) => drawState(all, k, ratio));
  // A diode conducts in few of a machine's states: some are drawn near those.
  const conducting = all
    .map((machine) => ({ machine, bases: conductingBases(machine) }))
    .filter(({ bases }) => bases.length > 0);
  const withDiodes = Array.from({ length: DIODE_STATE_COUNT }, (_, k) => {
    const { machine, bases } = conducting[k % conducting.length]!;
    return drawNear(machine, bases, { fault: k % 4, movedRatio: 0.05, ratio });
  });
  compared = (await twoAtATime([...drawn, ...withDiodes], compareState)).filter(
    (one) => one !== null,
  );
}, 120_000);

const count = (holds: (one: Compared) => boolean): number => compared.filter(holds).length;

describe("states drawn by seed", () => {
  test("agree with the simulator at every pin that does not float", () => {
    const away = compared
      .filter(({ awayV }) => awayV === null || !(awayV <= AGREED_V))
      .map(({ drawn, awayV, pin }) => [
        drawn.machine.name,
        drawn.relays,
        drawn.request,
        pin,
        awayV,
      ]);
    expect(away).toEqual([]);
    expect(compared.length).toBeGreaterThanOrEqual(200);
    expect(count(({ pinCount }) => pinCount === 0)).toBe(0);
  });

  test("cover what they are meant to cover", () => {
    const covered = {
      shorts: count(({ drawn }) => drawn.request.short !== undefined),
      opens: count(({ drawn }) => drawn.request.open !== undefined),
      twoRelaysLive: count(
        ({ drawn, solution }) =>
          drawn.relays === "live" && solution.relays.filter(({ pulled }) => pulled).length >= 2,
      ),
      diodes: count(({ solution }) => conducts(solution)),
      twoSources: count(
        ({ solution }) =>
          solution.supplies.some(({ currentA }) => currentA > GIVING_A) &&
          solution.batteries.some(({ currentA }) => Math.abs(currentA) > GIVING_A),
      ),
      positiveEarth: count(({ drawn }) => drawn.machine.job.supply.earthPolarity === "positive"),
      negativeEarth: count(({ drawn }) => drawn.machine.job.supply.earthPolarity === "negative"),
    };
    expect(covered.shorts).toBeGreaterThanOrEqual(40);
    expect(covered.opens).toBeGreaterThanOrEqual(40);
    expect(covered.twoRelaysLive).toBeGreaterThanOrEqual(20);
    expect(covered.diodes).toBeGreaterThanOrEqual(20);
    expect(covered.twoSources).toBeGreaterThanOrEqual(20);
    expect(covered.positiveEarth).toBeGreaterThanOrEqual(40);
    expect(covered.negativeEarth).toBeGreaterThanOrEqual(40);
  });
});
