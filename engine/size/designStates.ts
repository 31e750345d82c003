import type { Exclusion, Job } from "../job/index.ts";
import { presentParts } from "../job/index.ts";
import { type QuickState, restPositions } from "../operate/index.ts";

type Positions = Readonly<Record<string, string>>;
type Mode = "stopped" | "cranking" | "running";

/** A state worth solving for its largest currents, with the engine mode its switches follow. */
export interface DesignState extends QuickState {
  readonly positions: Positions;
  readonly flash: "on" | "off";
  readonly engine: { readonly mode: Mode };
}

/** Bounds the climb from the heaviest state: no machine has so many switches that all move. */
const MOST_ROUND_COUNT = 12;

/**
 * States among which the largest current of every wire is looked for: everything at rest, every named state, every state
 * an intent asks for, and from the heaviest of them the climb by one switch at a time to where no single switch adds
 * current, with every neighbour on the way and around every start; each with the flash on and off. Excluded states are
 * left out.
 *
 * @param weigh  total current drawn, A; null where the state does not settle.
 */
export function designStates(
  job: Job,
  weigh: (state: DesignState) => number | null,
): readonly DesignState[] {
  const switches = presentParts(job).filter((part) => part.kind === "switch");
  const ids = switches.map(({ id }) => id);
  const seen = new Map<string, { state: DesignState; weight: number }>();
  const visit = (state: DesignState): number => {
    const key = keyOf(ids, state);
    const known = seen.get(key);
    if (known !== undefined) return known.weight;
    const weight = isExcluded(job.exclusions, state) ? null : weigh(state);
    if (weight !== null) seen.set(key, { state, weight });
    return weight ?? Number.NEGATIVE_INFINITY;
  };
  const hasFlasher = presentParts(job).some((part) => part.kind === "flasher");
  const neighbours = (state: DesignState): readonly DesignState[] =>
    switches.flatMap((part) =>
      part.positions
        .filter(({ id }) => id !== state.positions[part.id])
        .map(({ id }) => ({ ...state, positions: { ...state.positions, [part.id]: id } })),
    );
  const starts = startStates(job);
  for (const start of starts) visit(start);
  let heaviest = heaviestOf([...seen.values()]);
  for (const start of starts) for (const next of neighbours(start)) visit(next);
  for (let round = 0; heaviest !== null && round < MOST_ROUND_COUNT; round++) {
    const before: DesignState = heaviest;
    for (const next of neighbours(before)) visit(next);
    heaviest = heaviestOf([...seen.values()]);
    if (heaviest === before) break;
  }
  if (hasFlasher) {
    for (const { state } of [...seen.values()]) visit({ ...state, flash: "off" });
  }
  return [...seen.values()].map(({ state }) => state);
}

function heaviestOf(
  found: readonly { readonly state: DesignState; readonly weight: number }[],
): DesignState | null {
  if (found.length === 0) return null;
  return found.reduce((most, one) => (isMore(one.weight, most.weight) ? one : most)).state;
}

/** Of states that draw alike the first stands, whatever a solve left in the last digits. */
const isMore = (weight: number, least: number): boolean => weight > least * (1 + 1e-7);

function startStates(job: Job): readonly DesignState[] {
  const hasFlasher = presentParts(job).some((part) => part.kind === "flasher");
  const at = (positions: Positions, mode: Mode = "running"): DesignState => ({
    positions: { ...restPositions(job, mode), ...positions },
    flash: hasFlasher ? "on" : "off",
    engine: { mode },
  });
  const intents = job.intents.flatMap(({ when }) =>
    when.map(({ positions, engine }) => {
      const first = Object.entries(positions).map(([part, ids]) => [part, ids[0]!]);
      return at(Object.fromEntries(first), engine?.[0]);
    }),
  );
  const named = job.states.map(({ positions, engine }) => at(positions, engine?.mode));
  return [at({}), at({}, "stopped"), ...named, ...intents];
}

const keyOf = (switches: readonly string[], { positions, engine, flash }: DesignState): string =>
  `${engine.mode} ${flash} ${switches.map((id) => positions[id]).join(" ")}`;

function isExcluded(exclusions: readonly Exclusion[], state: DesignState): boolean {
  return exclusions.some(
    ({ positions, engine }) =>
      (engine === undefined || engine.includes(state.engine.mode)) &&
      Object.entries(positions).every(([part, ids]) => ids.includes(state.positions[part] ?? "")),
  );
}
