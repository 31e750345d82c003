import type { Intent, Job } from "../job/index.ts";
import { type QuickState, restPositions } from "../operate/index.ts";

/** A state the job itself speaks of: one it names, or one a load is meant to work in. */
export interface DeclaredState {
  /** Words for a person: the state's name, or the load's. */
  readonly name: string;
  readonly state: QuickState;
  /** Loads the job says should work, and should be dead, in this state; beside what intents say. */
  readonly on: readonly string[];
  readonly off: readonly string[];
  readonly named: boolean;
}

/** Named states first, then one state for each way an intent names (every alternative position once). */
export function declaredStates(job: Job): readonly DeclaredState[] {
  const named = job.states.map((state): DeclaredState => {
    const mode = state.engine?.mode ?? "stopped";
    return {
      name: state.name,
      state: {
        positions: { ...restPositions(job, mode), ...state.positions },
        engine: { mode, ...(state.engine?.speedRpm ? { speedRpm: state.engine.speedRpm } : {}) },
        flash: state.flash ?? "off",
      },
      on: state.on ?? [],
      off: state.off ?? [],
      named: true,
    };
  });
  const intended = job.intents.flatMap((intent) =>
    intent.when.flatMap((way) => waysOf(job, intent, way)),
  );
  return [...named, ...intended];
}

function waysOf(job: Job, intent: Intent, way: Intent["when"][number]): readonly DeclaredState[] {
  const mode = way.engine?.[0] ?? "stopped";
  const first = Object.fromEntries(
    Object.entries(way.positions).map(([part, list]) => [part, list[0]!]),
  );
  const others = Object.entries(way.positions).flatMap(([part, list]) =>
    list.slice(1).map((position) => ({ ...first, [part]: position })),
  );
  return [first, ...others].map((positions) => ({
    name: intent.note ?? intent.load,
    state: {
      positions: { ...restPositions(job, mode), ...positions },
      engine: { mode },
      flash: way.flash ?? "off",
    },
    on: [intent.load],
    off: [],
    named: false,
  }));
}
