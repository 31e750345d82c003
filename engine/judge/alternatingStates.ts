import { type CompiledJob, type QuickState, restPositions } from "../operate/index.ts";

/** Bounds the states solved for one alternating net. */
const STATE_COUNT_MAX = 32;

/**
 * States in which the lamps of an alternating net burn one way or another: every position of every switch that stands on the
 * net, the others at rest with the engine running. At rest the regulator of the coil takes all of its output.
 */
export function alternatingStates({ job, jobNetwork, nets }: CompiledJob): readonly QuickState[] {
  const lighting = nets.nets.filter(({ use }) => use === "lighting");
  const standsOn = new Set(
    jobNetwork.elements.flatMap(({ role, from, to }) =>
      role.role === "switch" && lighting.some(({ nodes }) => nodes.has(from) || nodes.has(to))
        ? [role.part]
        : [],
    ),
  );
  let states: Record<string, string>[] = [restPositions(job, "running")];
  for (const part of job.parts) {
    if (part.kind !== "switch" || !standsOn.has(part.id)) continue;
    const wider = states.flatMap((state) =>
      part.positions.map(({ id }) => ({ ...state, [part.id]: id })),
    );
    if (wider.length > STATE_COUNT_MAX) break;
    states = wider;
  }
  return states.map((positions) => ({ positions, flash: "off" as const }));
}
