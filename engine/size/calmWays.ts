import { type Job, presentParts } from "../job/index.ts";
import { restPositions } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import type { DesignWay, Survey } from "./designCurrents.ts";
import type { DesignNetwork, DesignSolution } from "./designNetwork.ts";
import type { DesignState } from "./designStates.ts";
import { loadWay, touchingOf } from "./loadWay.ts";
import { type WayKeys, wayKeys } from "./wayKeys.ts";

/** A way with the solved network it was found in. */
export interface SolvedWay extends DesignWay {
  readonly state: DesignState;
  readonly solution: DesignSolution;
  /** Places of the elements on the way, from the load outward, in first. */
  readonly passed: readonly number[];
}

/**
 * Every way each load is fed, each in the calmest state found: of the surveyed states that feed the load so the one that
 * draws least, and from there one switch after another put to rest as long as the load stays on and less is drawn.
 */
export function waysOf(
  survey: Survey,
  duty: DesignWay["duty"],
  counts: (load: string) => boolean,
): readonly SolvedWay[] {
  const { network, solved } = survey;
  const touching = touchingOf(network);
  const tracked = litLoads(survey, counts);
  const keys = wayKeys(network, touching);
  for (const { state, solution } of solved) {
    keys.turnTo(solution.elementA);
    for (const { place, leastA, calmest } of tracked) {
      if (Math.abs(solution.elementA[place]!) < leastA) continue;
      const wayIndex = keys.indexOf(place);
      if (wayIndex === null) continue;
      const before = calmest.get(wayIndex);
      if (before !== undefined && !isCalmer(solution, before.solution)) continue;
      calmest.set(wayIndex, { state, solution, wayIndex });
    }
  }
  return tracked.flatMap((load) =>
    [...load.calmest.values()].map((one): SolvedWay => {
      const { state, solution } = calmed(survey, one, load, keys);
      const way = loadWay(network, touching, { elementA: solution.elementA, load: load.place });
      if (way === null) throw new Error(`sizing: the way of ${load.ref} was lost`);
      const feed = conductorsOn(network, way.into);
      const back = conductorsOn(network, way.outOf);
      const passed = [...way.into, ...way.outOf];
      const contactV = lossV(network, solution, passed);
      return { load: load.ref, duty, feed, back, contactV, state, solution, passed };
    }),
  );
}

/** Of states that draw alike the first stands, whatever a solve left in the last digits. */
const isCalmer = (one: DesignSolution, than: DesignSolution): boolean =>
  one.drawnA < than.drawnA * (1 - 1e-7);

interface Calm {
  readonly state: DesignState;
  readonly solution: DesignSolution;
  readonly wayIndex: number;
}

/** A load with the calmest state of each of its ways found so far. */
interface LitLoad {
  readonly ref: string;
  /** Of its element. */
  readonly place: number;
  /** With less it does not count as on, A. */
  readonly leastA: number;
  readonly calmest: Map<number, Calm>;
}

function litLoads(
  { network, solved }: Survey,
  counts: (load: string) => boolean,
): readonly LitLoad[] {
  const share = figure("sizeRules", "lit-share", "value").value;
  return [...network.loadAt].flatMap(([place, ref]) => {
    if (!counts(ref)) return [];
    const mostA = solved.reduce(
      (most, { solution }) => Math.max(most, Math.abs(solution.elementA[place]!)),
      0,
    );
    return mostA === 0 ? [] : [{ ref, place, leastA: share * mostA, calmest: new Map() }];
  });
}

function calmed(
  { job, network }: Survey,
  from: Calm,
  { place, leastA }: LitLoad,
  keys: WayKeys,
): Calm {
  let calm = from;
  const rest = restPositions(job, calm.state.engine.mode);
  for (const id of [null, ...switchIds(job)]) {
    const { positions, flash } = calm.state;
    const isThere = id === null ? flash === "off" : positions[id] === rest[id];
    if (isThere) continue;
    const state: DesignState =
      id === null
        ? { ...calm.state, flash: "off" }
        : { ...calm.state, positions: { ...positions, [id]: rest[id]! } };
    const solution = network.solve(state);
    if (solution === null || !isCalmer(solution, calm.solution)) continue;
    if (Math.abs(solution.elementA[place]!) < leastA) continue;
    keys.turnTo(solution.elementA);
    if (keys.indexOf(place) === calm.wayIndex) calm = { ...calm, state, solution };
  }
  return calm;
}

const switchIds = (job: Job): readonly string[] =>
  presentParts(job)
    .filter((part) => part.kind === "switch")
    .map(({ id }) => id)
    .sort();

const conductorsOn = (network: DesignNetwork, way: readonly number[]): readonly string[] =>
  way.flatMap((k) => network.conductorAt.get(k) ?? []);

/** Volts lost outside the wires: real resistance times design current; what is no resistance, the volts across it. */
export function lossV(
  network: DesignNetwork,
  solution: DesignSolution,
  way: readonly number[],
): number {
  return way
    .filter((k) => !network.conductorAt.has(k) && !network.elements[k]!.ofLoad)
    .reduce((sum, k) => {
      const { law, nodes } = network.elements[k]!;
      const acrossV = solution.nodeV[nodes[0]]! - solution.nodeV[nodes[1]]!;
      const volts = law.kind === "ohm" ? law.ohm * solution.elementA[k]! : acrossV;
      return sum + Math.abs(volts);
    }, 0);
}
