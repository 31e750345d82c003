import type { WorkingStep } from "../messages/index.ts";
import { type Figure, figure, fuseRatings, fuseStandardRatings } from "../tables/index.ts";
import { fuseWorking } from "./fuseWorking.ts";
import type { Inrush } from "./lampInrush.ts";

export interface FuseQuestion {
  /** Largest continuous current through the fuse, A, at test-point watts. */
  readonly loadA: number;
  /** Rating of the weakest wire behind it, A. */
  readonly wireA: number;
  /** Share of its rating the fuse may carry for long; absent: tables/protectionRules. */
  readonly loadRatio?: number;
  /** A type of tables/fuseStandardRatings; absent: blade. */
  readonly type?: string;
  /** Ratings to choose from, A; absent: the standard ones of the type. */
  readonly standardA?: readonly number[];
  /** Surge at every switch-on, where filaments start cold. */
  readonly inrush?: Inrush;
}

export interface FuseChoice {
  readonly windowMinA: number;
  readonly windowMaxA: number;
  /** Standard ratings inside the window, rising. */
  readonly allowedA: readonly number[];
  /** Smallest that also stands the surge; null where none does. */
  readonly suggestedA: number | null;
  /** Allowed ratings whose element ages at every switch-on. */
  readonly agedByInrushA: readonly number[];
  /** What would open an empty window; null while it is open. */
  readonly remedies: EmptyWindow | null;
  readonly figures: readonly Figure[];
  readonly working: readonly WorkingStep[];
}

export interface EmptyWindow {
  /** A wire of at least this rating takes the smallest fuse that carries the load; null: no standard fuse is so large. */
  readonly largerWireA: number | null;
  /** Least number of circuits, each behind its own fuse, that the wire can take; null: no standard fuse suits the wire. */
  readonly circuitCount: number | null;
  readonly loadEachA: number | null;
}

/** Sums like 1.75 + 2.5 + 3.75 over 0.8 must meet 10 although a double may miss it by its last bits. */
const ROUNDING_RATIO = 1e-9;

/**
 * Which fuse: at or under the weakest wire, over the load with its margin.
 *
 *   load / share ≤ fuse ≤ wire;   surge I²t ≤ share of the least melting I²t
 *
 * The smallest of the allowed is suggested. Where none is allowed the wire grows or the circuit is split: the fuse never.
 */
export function chooseFuse(question: FuseQuestion): FuseChoice {
  const type = question.type ?? "blade";
  const share = figure("protectionRules", "load-share-most", "value");
  const loadRatio = question.loadRatio ?? share.value;
  const windowMinA = question.loadA / loadRatio;
  const windowMaxA = question.wireA;
  const standardA = question.standardA ?? standardRatings(type);
  const carriesA = standardA.filter((ratedA) => ratedA >= windowMinA * (1 - ROUNDING_RATIO));
  const allowedA = carriesA.filter((ratedA) => ratedA <= windowMaxA * (1 + ROUNDING_RATIO));
  const pulse = figure("protectionRules", "pulse-100000", "value");
  const ages = (ratedA: number): boolean =>
    question.inrush !== undefined && !standsInrush(type, ratedA, question.inrush, pulse);
  const agedByInrushA = allowedA.filter(ages);
  const suggestedA = allowedA.find((ratedA) => !ages(ratedA)) ?? null;
  const choice = { windowMinA, windowMaxA, allowedA, suggestedA, agedByInrushA };
  const figures = question.inrush ? [share, pulse, ...question.inrush.figures] : [share];
  const remedies =
    suggestedA === null
      ? openingRemedies(question, {
          loadRatio,
          standardA,
          leastA: carriesA.find((ratedA) => !ages(ratedA)),
        })
      : null;
  const working = fuseWorking({ question, choice, loadRatio, share, pulse });
  return { ...choice, remedies, figures, working };
}

function standardRatings(type: string): readonly number[] {
  const found = fuseStandardRatings.filter((row) => row.type === type).map((row) => row.ratedA);
  if (found.length === 0) throw new Error(`no standard ratings of fuse type "${type}"`);
  return found.sort((a, b) => a - b);
}

/** No surge is always stood. Where no melting figure is known a surge is not shown to be stood: see `isMeltingKnown`. */
function standsInrush(type: string, ratedA: number, inrush: Inrush, pulse: Figure): boolean {
  if (inrush.i2tA2s === 0) return true;
  const meltLowA2s = leastMeltingA2s(type, ratedA);
  return meltLowA2s !== null && inrush.i2tA2s <= pulse.value * meltLowA2s;
}

const leastMeltingA2s = (type: string, ratedA: number): number | null =>
  fuseRatings.find((one) => one.type === type && one.ratedA === ratedA)?.meltLowA2s ?? null;

/** Whether anybody has published what melts a fuse: without it neither standing nor ageing can be claimed. */
export const isMeltingKnown = (type: string, ratedA: number): boolean =>
  leastMeltingA2s(type, ratedA) !== null;

function openingRemedies(
  question: FuseQuestion,
  from: {
    readonly loadRatio: number;
    readonly standardA: readonly number[];
    readonly leastA: number | undefined;
  },
): EmptyWindow {
  const suits = from.standardA.filter((ratedA) => ratedA <= question.wireA * (1 + ROUNDING_RATIO));
  const largestA = suits.at(-1);
  const circuitCount =
    largestA === undefined
      ? null
      : Math.ceil((question.loadA / (largestA * from.loadRatio)) * (1 - ROUNDING_RATIO));
  return {
    largerWireA: from.leastA ?? null,
    circuitCount,
    loadEachA: circuitCount === null ? null : question.loadA / circuitCount,
  };
}
