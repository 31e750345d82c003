import type { Figure, Finding } from "../messages/index.ts";

export type Verdict = "fit" | "mend" | "stop" | "not-proven";

/** A finding with its sentence, as `--json` prints it. */
export interface SpokenFinding extends Finding {
  readonly message: string;
}

/** The parts a cut length is made of, mm. */
export interface CutParts {
  readonly path: number;
  readonly strip: number;
  readonly retermination: number;
  readonly flex: number;
  readonly trim: number;
  readonly rounding: number;
  readonly total: number;
}

/** One source that can feed a wire, and the fuses that cut every path from it. */
export interface FeedRow {
  readonly source: string;
  /** Smallest set of fuses that cuts all paths; empty when nothing does. */
  readonly cut: readonly string[];
  /** Sum of their continuous ratings, A; null when nothing cuts it. */
  readonly sumA: number | null;
  /** Longest stretch of wire between the source and the first fuse, mm; null when a length is unknown. */
  readonly unfusedMm: number | null;
  readonly paths: number;
}

export interface CheckWireRow {
  readonly wire: string;
  readonly kind: "wire" | "flyLead";
  readonly circuit: string | null;
  readonly loom: string | null;
  readonly status: string;
  readonly from: string;
  readonly to: string;
  readonly colour: { readonly main: string; readonly tracer: string | null } | null;
  readonly makeId: string;
  readonly areaMm2: number;
  readonly strandCount: number;
  readonly strandDiameterMm: number;
  readonly wall: string;
  readonly insulation: string;
  readonly odMm: number;
  readonly pathMm: number | null;
  readonly cutMm: CutParts | null;
  readonly lengthBasis: string | null;
  readonly ohmPerM: number;
  /** Largest lasting current, rms on alternating nets; null, with why, where a net's current is not known. */
  readonly worstA: number | null;
  /** `operate` arguments of the state with the largest current. */
  readonly worstState: readonly string[];
  /** Largest current while the starter turns, for seconds; only where there is one. */
  readonly crankingA?: number;
  readonly crankingState?: readonly string[];
  readonly ratingA: number;
  readonly ratingBasis: string;
  readonly ambientC: number;
  readonly bundleCount: number;
  readonly loadedCount: number;
  readonly feeds: readonly FeedRow[];
  readonly sizedBy: "person" | "engine";
  readonly governedBy: string;
  readonly why?: string;
}

export interface CheckLoadRow {
  readonly load: string;
  readonly worstDropV: number | null;
  readonly feedV: number | null;
  readonly returnV: number | null;
  readonly contactV: number | null;
  readonly limitV: number;
  readonly limit: Figure;
  readonly state: readonly string[];
  readonly why?: string;
}

export interface CheckFuseRow {
  readonly fuse: string;
  readonly ratingA: number;
  readonly marking: string;
  /** What it carries for ever: the rating, or the lower reading of a blow mark. Null when nobody can tell. */
  readonly continuousA: number | null;
  readonly type: string;
  readonly protects: readonly string[];
  readonly weakestWire: string | null;
  readonly windowMinA: number | null;
  readonly windowMaxA: number | null;
  readonly worstLoadA: number;
  /** Loads that stop when it is gone. */
  readonly dies: readonly string[];
  readonly unfusedMm: number | null;
}

export interface CheckResult {
  readonly verdict: Verdict;
  readonly counts: {
    readonly stop: number;
    readonly mend: number;
    readonly advise: number;
    readonly notProven: number;
  };
  readonly lengthsComplete: boolean;
  readonly passes: number;
  readonly settled: boolean;
  readonly findings: readonly SpokenFinding[];
  readonly wires: readonly CheckWireRow[];
  readonly loads: readonly CheckLoadRow[];
  readonly fuses: readonly CheckFuseRow[];
  readonly statesSolved: number;
  /** What was not judged because something more basic is wrong; null: everything was judged. */
  readonly withheld: string | null;
}
