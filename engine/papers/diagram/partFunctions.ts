import type { Link } from "../circuit/machineGraph.ts";
import type { MachinePaths } from "./machinePaths.ts";

/** Everything drawn of each part, by its id: coil here, contact there. */
export function partFunctions({ segments }: MachinePaths): ReadonlyMap<string, readonly Link[]> {
  const functions = new Map<string, Link[]>();
  for (const { steps } of segments) {
    for (const step of steps) {
      if (step.kind !== "part") continue;
      functions.set(step.link.of, [...(functions.get(step.link.of) ?? []), step.link]);
    }
  }
  return functions;
}
