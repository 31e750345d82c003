import type { Point } from "../../geometry/index.ts";

/** A loom as a tree of limbs laid on a board: millimetres, x to the right, y down, front of the machine left. */
export interface BoardLayout {
  readonly loom: string;
  readonly widthMm: number;
  readonly heightMm: number;
  readonly limbs: readonly BoardLimb[];
  /** Ends, breakouts and stations passed, in order of their distance from the datum. */
  readonly nodes: readonly BoardNode[];
  readonly joints: readonly BoardJoint[];
  readonly clips: readonly BoardClip[];
  readonly coverings: readonly BoardCovering[];
  readonly pegs: readonly BoardPeg[];
  /** Runs that closed a loop: each is laid out from one end only, its other end marked as what it meets. */
  readonly brokenLoops: readonly string[];
  /** Pieces nobody has measured: not laid out, because a board is at true length. */
  readonly unmeasured: readonly string[];
  /** What could not be kept; nothing is moved quietly. */
  readonly faults: BoardFaults;
  readonly seed: number;
  readonly stepCount: number;
}

export interface BoardFaults {
  /** Pairs of limbs that cross. */
  readonly crossingCount: number;
  /** Pairs of limbs nearer than the clearance away from the fork where they part. */
  readonly tightCount: number;
  /** How much wider than asked, mm; 0 where it fits. */
  readonly overWidthMm: number;
}

/** A stretch of loom between two ends or breakouts, straight or folded, as its centre line. */
export interface BoardLimb {
  readonly id: string;
  readonly from: string;
  readonly to: string;
  readonly lengthMm: number;
  readonly points: readonly Point[];
  /** Where it is bent although the machine does not bend it there. */
  readonly folds: readonly BoardFold[];
  readonly pieces: readonly BoardPiece[];
}

export interface BoardFold {
  readonly fromMm: number;
  readonly toMm: number;
  readonly radiusMm: number;
  readonly turnDeg: number;
}

/** Part of a limb with the same wires from end to end. */
export interface BoardPiece {
  /** Id of its stretch. */
  readonly stretch: string;
  readonly run: string;
  readonly fromMm: number;
  readonly toMm: number;
  /** Where along its run it starts and stops, from the run's `from` station. */
  readonly runFromMm: number;
  readonly runToMm: number;
  /** As laid. */
  readonly diameterMm: number;
  readonly flex: boolean;
  readonly wires: readonly string[];
}

export interface BoardNode {
  /** Station, or RUN@mm where the wires change along a run. */
  readonly id: string;
  readonly station: string | null;
  readonly kind: "end" | "breakout" | "passed";
  readonly at: Point;
  /** Along the loom from the datum peg. */
  readonly fromDatumMm: number;
  /** Station the other end of a broken loop meets; null otherwise. */
  readonly meets: string | null;
  /** Direction from the loom outwards at an end; the middle of the widest free angle elsewhere. */
  readonly outwardDeg: number;
  /** Which laid part of the loom it belongs to. */
  readonly partIndex: number;
}

export interface BoardJoint {
  readonly joint: string;
  readonly at: Point;
  readonly alongDeg: number;
  readonly limb: string | null;
  readonly fromDatumMm: number;
}

/** Where the machine holds the loom. */
export interface BoardClip {
  readonly at: Point;
  readonly alongDeg: number;
}

/** Sleeve or tape over part of a limb, from so far to so far along it. */
export interface BoardCovering {
  readonly limb: string;
  readonly fromMm: number;
  readonly toMm: number;
}

export interface BoardPeg {
  /** "6", or "6a" between numbered ones. */
  readonly label: string;
  readonly at: Point;
  readonly fromDatumMm: number;
  readonly node: string | null;
}

/** What a board is laid out by. */
export interface BoardAsked {
  /** Greatest width of the laid loom. */
  readonly boardWidthMm: number;
  readonly seed: number;
}
