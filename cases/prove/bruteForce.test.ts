import { describe, expect, test } from "vitest";
import { seededRandom } from "../../engine/geometry/index.ts";
import { comparedWithGroups, everyState } from "../../engine/prove/bruteForceForTests.ts";
import { comparedWithSurvival } from "../../engine/prove/faultsForTests.ts";
import { proofPlan } from "../../engine/prove/proofPlan.ts";
import { provedWires } from "../../engine/prove/provedWires.ts";
import { truthOf } from "../../engine/prove/truthOf.ts";
import { DEMOS, jobOfDemo, proofInputOf } from "./proofOfDemo.ts";

/** Machines whose whole product is solved; of the others a sample, drawn by a recorded seed (the bench draws a million). */
const WHOLE_BELOW_COUNT = 2000;
const SAMPLE_COUNT = 400;
const PAIR_COUNT = 1000;
const SEED = 20;

describe.each(DEMOS)("%s", (name) => {
  const plan = proofPlan(proofInputOf(jobOfDemo(name)));
  const truth = truthOf(plan, [...plan.states.keys()]);

  test("every load in every full state does what its group says", () => {
    const random = seededRandom(SEED);
    for (const engine of plan.space.engines) {
      const isWhole = plan.space.positionCount < WHOLE_BELOW_COUNT && engine.mode !== "running";
      const drawn = () =>
        Array.from({ length: engine.mode === "running" ? SAMPLE_COUNT / 4 : SAMPLE_COUNT }, () =>
          Object.fromEntries(
            plan.space.variables.map(({ id, positions }) => [
              id,
              positions[Math.floor(random() * positions.length)]!,
            ]),
          ),
        ).filter((full) => plan.space.completed(full, engine) !== null);
      const states = isWhole ? everyState(plan, engine) : drawn();
      const compared = comparedWithGroups(plan, truth.states, engine, states);
      expect(compared.comparedCount).toBeGreaterThan(0);
      expect(compared.disagreements).toEqual([]);
    }
  }, 600_000);

  test("no fault, followed to its end, burns a wire that is called saved", () => {
    const wires = provedWires(plan, truth.tallies, [...plan.input.conductors.keys()]);
    for (const engine of plan.space.engines) {
      const compared = comparedWithSurvival(
        plan,
        wires.judged.map(({ survival }) => survival),
        engine,
        { pairCount: PAIR_COUNT / 2, random: seededRandom(SEED) },
      );
      expect(compared.wireCheckCount).toBeGreaterThan(0);
      expect(compared.disagreements).toEqual([]);
    }
  }, 600_000);
});
