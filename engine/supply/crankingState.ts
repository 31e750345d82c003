import { loadRef, type PartOf, presentParts } from "../job/index.ts";
import { type CompiledJob, type QuickState, restPositions } from "../operate/index.ts";

/** A starter with the state in which it turns. */
export interface CrankingState {
  readonly motor: PartOf<"motor">;
  /** Its element in the network. */
  readonly place: number;
  readonly state: QuickState;
  readonly name: string;
}

/** Why there is nothing to answer. */
export type NoCranking = "no starter" | "no battery" | "no named state turns the starter";

/** Share of its running current from which a starter is taken as turning. */
const TURNS_RATIO = 0.25;

/** The named state in which the starter draws most. */
export function crankingState(compiled: CompiledJob): CrankingState | NoCranking {
  const { job, jobNetwork } = compiled;
  const motor = presentParts(job).find(
    (part): part is PartOf<"motor"> => part.kind === "motor" && part.use === "starter",
  );
  if (motor === undefined) return "no starter";
  if (!presentParts(job).some(({ kind }) => kind === "battery")) return "no battery";
  const ref = loadRef(motor.id, motor.between);
  const place = jobNetwork.elements.findIndex(({ of }) => of === ref);
  const leastA = (TURNS_RATIO * job.supply.nominalV) / motor.runOhm.value;
  let best: { readonly currentA: number; readonly found: CrankingState } | null = null;
  for (const named of job.states) {
    const state: QuickState = {
      positions: { ...restPositions(job, "cranking"), ...named.positions },
      engine: { mode: "cranking" },
    };
    const currentA = Math.abs(compiled.solve(state).elementA[place]!);
    if (currentA < leastA || (best !== null && currentA <= best.currentA)) continue;
    best = { currentA, found: { motor, place, state, name: named.name } };
  }
  return best === null ? "no named state turns the starter" : best.found;
}
