import { type Job, loadsOf } from "../../job/index.ts";
import type { OperateSolution } from "../../operate/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { requestOf, solutionOf } from "../solvedStates.ts";

/** What a meter shows with a circuit at work. */
export interface WorkingState {
  /** "key on, lights off". */
  readonly words: string;
  /** Volts to the battery's earthed post by pin; a pin that floats or was not solved is absent. */
  readonly volts: ReadonlyMap<string, number>;
  readonly kindOf: (pin: string) => "dc" | "ac";
}

/** Above what leaks of open contacts come to. */
const CARRYING_A = 0.001;
const ENGINE_RANK = { stopped: 0, running: 1, cranking: 2 } as const;

/**
 * The named state in which most of these wires carry current, the stiller engine first; without any, a way somebody means one of these loads to work.
 * Null: nothing is known of this circuit at work.
 */
export function stateFor(
  input: PaperInput,
  wires: ReadonlySet<string>,
  loads: readonly string[],
): WorkingState | null {
  const best = input.states
    .flatMap(({ state, solution }) => {
      if (solution === null) return [];
      const carrying = solution.wires.filter(
        ({ wire, currentA }) => wires.has(wire) && Math.abs(currentA) > CARRYING_A,
      );
      const rank = ENGINE_RANK[state.engine?.mode ?? "stopped"];
      return carrying.length === 0 ? [] : [{ state, solution, count: carrying.length, rank }];
    })
    .sort((a, b) => b.count - a.count || a.rank - b.rank || (a.state.id < b.state.id ? -1 : 1))[0];
  if (best) return readings(best.solution, best.state.name);
  return intended(input, loads);
}

function intended({ job, design }: PaperInput, loads: readonly string[]): WorkingState | null {
  for (const intent of job.intents.filter(({ load }) => loads.includes(load))) {
    const way = intent.when[0];
    if (way === undefined) continue;
    const positions = Object.fromEntries(
      Object.entries(way.positions).map(([part, ids]) => [part, ids[0]!]),
    );
    const mode = way.engine?.[0];
    const request = requestOf({
      positions,
      flash: way.flash,
      engine: mode === undefined ? undefined : { mode },
    });
    const solution = solutionOf(job, design.conductors, request);
    if (solution !== null) return readings(solution, inWords(positions));
  }
  return null;
}

function readings({ pins }: OperateSolution, words: string): WorkingState {
  const ac = new Set(pins.filter(({ net }) => net !== "dc").map(({ pin }) => pin));
  return {
    words,
    volts: new Map(pins.flatMap(({ pin, v }) => (v === null ? [] : [[pin, v] as const]))),
    kindOf: (pin) => (ac.has(pin) ? "ac" : "dc"),
  };
}

const inWords = (positions: Readonly<Record<string, string>>): string =>
  Object.entries(positions)
    .map(([part, position]) => `${part} at ${position}`)
    .join(", ") || "everything at rest";

/** Loads whose pins are among these points. */
export const loadsAt = (job: Job, pins: ReadonlySet<string>): readonly string[] =>
  loadsOf(job)
    .filter((load) => load.pins.some((pin) => pins.has(pin)))
    .map(({ ref }) => ref);
