import { type Job, presentParts } from "../job/index.ts";
import { restPositions } from "../operate/index.ts";
import { figure } from "../tables/index.ts";
import type { DesignWay, Survey } from "./designCurrents.ts";
import type { DesignNetwork, DesignSolution } from "./designNetwork.ts";
import type { DesignState } from "./designStates.ts";
import { type LoadWay, loadWay, touchingOf } from "./loadWay.ts";

/** A way with the solved network it was found in. */
export interface SolvedWay extends DesignWay {
  readonly state: DesignState;
  readonly solution: DesignSolution;
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
  const { network } = survey;
  const touching = touchingOf(network);
  const share = figure("sizeRules", "lit-share", "value").value;
  const found: SolvedWay[] = [];
  for (const [k, load] of network.loadAt) {
    if (!counts(load)) continue;
    const mostA = Math.max(0, ...survey.solved.map((one) => Math.abs(one.solution.elementA[k]!)));
    if (mostA === 0) continue;
    const wayIn = (solution: DesignSolution): Way | null => {
      if (Math.abs(solution.elementA[k]!) < share * mostA) return null;
      const way = loadWay(network, touching, { elementA: solution.elementA, load: k });
      return way === null ? null : { ...way, key: keyOf(network, way) };
    };
    const calmest = new Map<string, Calm>();
    for (const { state, solution } of survey.solved) {
      const { drawnA } = solution;
      const way = wayIn(solution);
      if (
        way === null ||
        drawnA >= (calmest.get(way.key)?.solution.drawnA ?? Number.POSITIVE_INFINITY)
      )
        continue;
      calmest.set(way.key, { state, solution, way });
    }
    for (const one of calmest.values()) {
      const { state, solution, way } = calmed(survey, one, wayIn);
      const feed = conductorsOn(network, way.into);
      const back = conductorsOn(network, way.outOf);
      const contactV = lossV(network, solution, [...way.into, ...way.outOf]);
      found.push({ load, duty, feed, back, contactV, state, solution });
    }
  }
  return found;
}

interface Way extends LoadWay {
  readonly key: string;
}

interface Calm {
  readonly state: DesignState;
  readonly solution: DesignSolution;
  readonly way: Way;
}

function calmed(
  { job, network }: Survey,
  from: Calm,
  wayIn: (solution: DesignSolution) => Way | null,
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
    if (solution === null || solution.drawnA >= calm.solution.drawnA) continue;
    const way = wayIn(solution);
    if (way?.key === calm.way.key) calm = { state, solution, way };
  }
  return calm;
}

const switchIds = (job: Job): readonly string[] =>
  presentParts(job)
    .filter((part) => part.kind === "switch")
    .map(({ id }) => id)
    .sort();

const keyOf = (network: DesignNetwork, { into, outOf }: LoadWay): string =>
  [...conductorsOn(network, into), "|", ...conductorsOn(network, outOf)].join(" ");

const conductorsOn = (network: DesignNetwork, way: readonly number[]): readonly string[] =>
  way.flatMap((k) => network.conductorAt.get(k) ?? []);

/** Volts lost outside the wires: real resistance times design current; what is no resistance, the volts across it. */
function lossV(network: DesignNetwork, solution: DesignSolution, way: readonly number[]): number {
  return way
    .filter((k) => !network.conductorAt.has(k))
    .reduce((sum, k) => {
      const { law, nodes } = network.elements[k]!;
      const acrossV = solution.nodeV[nodes[0]]! - solution.nodeV[nodes[1]]!;
      const volts = law.kind === "ohm" ? law.ohm * solution.elementA[k]! : acrossV;
      return sum + Math.abs(volts);
    }, 0);
}
