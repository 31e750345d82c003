import { beforeAll, describe, expect, test } from "vitest";
import { type Compared, compareState, twoAtATime } from "./compareState.ts";
import { drawState, machines, seededRatios } from "./drawStates.ts";

const SEED = 20251125;
const STATE_COUNT = 315;
/** The contract's agreement. */
const AGREED_V = 1e-6;
/** A junction carrying this conducts; a battery or generator giving this is a source. */
const CONDUCTING_A = 1e-3;
const GIVING_A = 0.1;

let compared: readonly Compared[] = [];

beforeAll(async () => {
  const all = machines();
  const ratio = seededRatios(SEED);
  const drawn = Array.from({ length: STATE_COUNT }, (_, k) => drawState(all, k, ratio));
  compared = (await twoAtATime(drawn, compareState)).filter((one) => one !== null);
}, 120_000);

const count = (holds: (one: Compared) => boolean): number => compared.filter(holds).length;

describe("states drawn by seed", () => {
  test("agree with the simulator at every pin that does not float", () => {
    const away = compared
      .filter(({ awayV }) => !(awayV <= AGREED_V))
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
      diodes: count(({ solution }) =>
        solution.elements.some(({ kind, currentA }) => kind === "diode" && currentA > CONDUCTING_A),
      ),
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
