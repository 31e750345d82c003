import type { Duration } from "../heat/index.ts";
import type { Finding } from "../messages/index.ts";
import type { QuickState } from "../operate/index.ts";

export type ProofVerdict = "fit" | "mend" | "stop" | "not-proven";

/** One short solved in full. */
export interface WorstShort {
  readonly place: string;
  /** Pin, or earth. */
  readonly to: string;
  readonly ohm: number;
  readonly source: string;
  /** Through the conductor it is told of. */
  readonly currentA: number;
  /** The same with the short dead. */
  readonly deadA: number;
  readonly cut: readonly string[];
  readonly opensMinS: number | null;
  readonly opensMaxS: number | null;
  readonly peakC: number | null;
  readonly limitC: number | null;
  readonly limitDuration: Duration | null;
  readonly i2tA2s: number | null;
  readonly reproduce: readonly string[];
  readonly state: QuickState;
}

export interface ProvedWire {
  readonly wire: string;
  /** Sources and sets of fuses it is exposed to. */
  readonly faultsCount: number;
  readonly worst: Omit<WorstShort, "state" | "reproduce"> | null;
  /** Kelvins between the proven bound over every current and the limit; negative: over. Null: nothing bounds it. */
  readonly margin: number | null;
  /** The proven bound itself. */
  readonly bound: {
    readonly currentA: number;
    readonly timeS: number | null;
    readonly peakC: number;
    readonly limitC: number;
    readonly duration: Duration;
  } | null;
  /** Largest current it carries for long with nothing broken, A. */
  readonly lastingA: number;
  /** Longest a dead short at its far end takes to open a fuse with the battery weak and cold, s; null: never promised. */
  readonly weakest: { readonly currentA: number; readonly opensMaxS: number | null } | null;
  readonly verdict: string;
  readonly why: string | null;
  readonly reproduce: readonly string[] | null;
}

export interface TruthRow {
  readonly when: Readonly<Record<string, readonly string[]>>;
  readonly engine: readonly string[];
  readonly lit: readonly string[];
  readonly dead: readonly string[];
  readonly differsWhenHeld: readonly string[];
}

export interface StrayRow {
  readonly load: string;
  readonly shareOfRatedPower: number;
  readonly open: string | null;
  readonly alsoOpen: readonly string[];
  readonly symptom: string;
  readonly designOut: string;
  readonly state: Readonly<Record<string, unknown>>;
  readonly reproduce: readonly string[];
}

export interface ProvedFuse {
  readonly fuse: string;
  /** Largest current it carries for long with nothing broken, A. */
  readonly lastingA: number;
  readonly firstToOpenCount: number;
  readonly overlapsWith: readonly string[];
  readonly dies: readonly string[];
}

export interface ProvedBundle {
  readonly stretch: string;
  readonly state: Readonly<Record<string, unknown>> | null;
  readonly hottestWire: string;
  readonly conductorC: number | null;
  readonly limitC: number;
}

/** A contact or cavity at the largest current it carries for long with nothing broken. */
export interface RatedPlace {
  /** PART:A-B or CONNECTOR.CAVITY. */
  readonly place: string;
  readonly currentA: number;
  readonly ratingA: number;
  readonly state: Readonly<Record<string, string>> | null;
}

/** A fuse in normal use. */
export interface UsedFuse {
  readonly fuse: string;
  readonly currentA: number;
  /** By the smallest reading of its number, A. */
  readonly carriesA: number;
  /** What it carries for long, buttons let go, over that. */
  readonly loadRatio: number;
  /** Surge of the cold lamps behind it, and its heat. */
  readonly surgeA: number;
  readonly surgeA2s: number;
  /** Least heat that may open it at that current; null: it does not open, or nobody published the shortest time. */
  readonly opensMinA2s: number | null;
  readonly state: Readonly<Record<string, string>> | null;
}

export interface InUse {
  readonly contacts: readonly RatedPlace[];
  readonly cavities: readonly RatedPlace[];
  readonly fuses: readonly UsedFuse[];
}

export interface Coverage {
  readonly switches: readonly {
    readonly part: string;
    readonly driven: string;
    readonly positions: number;
  }[];
  readonly productCount: number;
  readonly excluded: readonly { readonly rule: string; readonly count: number }[];
  readonly groups: readonly {
    readonly switches: readonly string[];
    readonly given: Readonly<Record<string, string>>;
    readonly count: number;
  }[];
  readonly statesSolved: number;
  readonly relayTwiceSettled: number;
  readonly opens: number;
  readonly shortsToEarth: number;
  readonly shortsToNeighbour: number;
  readonly resistancesPerShort: number;
  readonly batteryCases: number;
  readonly temperatureCases: number;
  readonly faultStatesCovered: number;
  readonly screened: number;
  readonly solvedInFull: number;
  readonly largestKclResidualA: number;
  readonly largestScreenErrorPercent: number;
  readonly screenMarginPercent: number;
  /** Shorts between neighbours, which may feed a cold lamp: overestimated, and leaned on for nothing. */
  readonly neighbourScreenErrorPercent: number;
  /** Confirmed shorts that moved a relay: no screening holds for those. */
  readonly relayMovedByShortCount: number;
  readonly reductions: readonly { readonly decision: string; readonly removedCount: number }[];
  readonly seed: number;
}

export interface ChargeFault {
  readonly fault: string;
  readonly speedRpm: number;
  readonly largestV: number | null;
  readonly solved: boolean;
  readonly reproduce: readonly string[];
}

export interface Tolerance {
  readonly method: string;
  readonly seed: number;
  readonly samples: number;
  readonly worstMargin: number | null;
  /** Estimated lengths were taken this much longer and shorter, %. */
  readonly lengthBandPercent: number;
  /** Largest current of anything in those corners over the largest without, as a ratio. */
  readonly moreCurrentRatio: number;
  readonly verdictChanges: readonly string[];
}

/** A finding with its sentence, and that of each remedy. */
export interface ProvedFinding extends Finding {
  readonly message: string;
}

/** What `prove` answers; the contract's fields, and what was added to them. */
export interface ProveResult {
  readonly verdict: ProofVerdict;
  readonly findings: readonly ProvedFinding[];
  readonly coverage: Coverage;
  readonly truth: readonly TruthRow[];
  readonly stray: readonly StrayRow[];
  readonly wires: readonly ProvedWire[];
  readonly fuses: readonly ProvedFuse[];
  readonly bundles: readonly ProvedBundle[];
  readonly inUse: InUse;
  readonly charge: readonly ChargeFault[];
  readonly tolerance: Tolerance;
}
