import { allTables } from "../tables/index.ts";
import type { ModelState, SupplyModel } from "./supplyModel.ts";
import { supplyRule } from "./supplyRule.ts";

export const RIDES = ["town", "mixed", "night", "rally"] as const;
export type RideName = (typeof RIDES)[number];

/** A stretch of a ride: engine speed and lighting state constant. Speed 0: parked with everything off. */
export interface RideStep {
  readonly durationS: number;
  readonly speedRpm: number;
  /** Id of a lighting state; of none while parked. */
  readonly state: string | null;
}

/**
 * A ride of tables/rideProfiles on this machine: speeds are shares of the fastest speed an output is stated at. Lit is the dipped beam where
 * a state says so, main the state that draws most, unlit the one that draws least.
 *
 * @returns null where no output speed is known or no state can be ridden.
 */
export function rideSteps(
  model: SupplyModel,
  ride: RideName,
  totalS = supplyRule(`ride-${ride}`),
): readonly RideStep[] | null {
  const fastestRpm = Math.max(
    0,
    ...model.states.flatMap(({ sources }) => sources.map((one) => one.fastestRpm ?? 0)),
  );
  if (fastestRpm === 0 || model.states.length === 0) return null;
  const profile = allTables.rideProfiles.rows.filter((row) => row.ride === ride);
  const steps: RideStep[] = [];
  let leftS = totalS;
  for (let k = 0; leftS > 0; k++) {
    const { durationS, speedRatio, lights } = profile[k % profile.length]!;
    const state = stateFor(model.states, lights).id;
    steps.push({
      durationS: Math.min(durationS, leftS),
      speedRpm: Math.round(speedRatio * fastestRpm),
      state,
    });
    leftS -= durationS;
  }
  return steps;
}

/** The state ridden by day, with lights, with main beam: by what the states draw. */
export function stateFor(states: readonly ModelState[], lights: string): ModelState {
  const byDemand = states.toSorted((a, b) => drawnA(a) - drawnA(b) || (a.id < b.id ? -1 : 1));
  if (lights === "unlit") return byDemand[0]!;
  if (lights === "main") return byDemand.at(-1)!;
  const dipped = states.find(({ id, name }) => /\bdip/i.test(`${id} ${name}`));
  return dipped ?? byDemand.at(-1)!;
}

const drawnA = ({ demand }: ModelState): number => demand.currentA[2]!;
