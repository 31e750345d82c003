import type { Basis, Status } from "../job/index.ts";

/** Where a pin is: at a station, or so many mm along a run from its `from` station. */
export type Place =
  | { readonly kind: "station"; readonly station: string }
  | { readonly kind: "run"; readonly run: string; readonly offsetMm: number };

/** One piece of a run a wire lies in, in the direction the wire goes. */
export interface PathStep {
  readonly run: string;
  /** Position along the run from its `from` station, mm; null at the far end of a run nobody measured. */
  readonly enterMm: number | null;
  readonly leaveMm: number | null;
  /** Null when that length is not known. */
  readonly lengthMm: number | null;
}

/** Why a length is not known. Never answered with zero. */
export type LengthUnknown =
  | { readonly reason: "run-not-measured"; readonly runs: readonly string[] }
  | { readonly reason: "no-station"; readonly pins: readonly string[] }
  | { readonly reason: "no-way"; readonly stations: readonly [string, string] };

/** The way of one wire through the loom. */
export interface WireRoute {
  readonly wire: string;
  readonly status: Status;
  readonly loom: string | null;
  /** typed: somebody entered it; routed: over the runs; stub: both ends at one station. */
  readonly how: "typed" | "routed" | "stub" | "unknown";
  /** Path length, mm; null when not known. */
  readonly lengthMm: number | null;
  /** The weakest of what it is made of; null with an unknown length. */
  readonly basis: Basis | null;
  readonly unknown: LengthUnknown | null;
  /** Pieces of run in order; empty for a stub and where the way is not known. */
  readonly steps: readonly PathStep[];
  /** Stations touched, in order, both ends included where they are stations. */
  readonly stations: readonly string[];
  /** Runs on the way that move with steering or suspension. */
  readonly flexRuns: readonly string[];
  /** Another way round whose length is close to this one's; null where there is none. */
  readonly otherWay: { readonly lengthMm: number; readonly runs: readonly string[] } | null;
}

/** A stretch of loom with the same wires from end to end: the bundle. */
export interface Stretch {
  /** LOOM/RUN, with #2, #3 … for further pieces of the same run; LOOM is "loose" for a wire of no loom. */
  readonly id: string;
  readonly loom: string | null;
  readonly run: string;
  readonly enterMm: number;
  readonly leaveMm: number | null;
  readonly lengthMm: number | null;
  readonly flex: boolean;
  readonly ambientC: number;
  /** Sorted ids of the wires that will be on the machine. */
  readonly wires: readonly string[];
}

/** What the physical loom is, before any size is chosen. */
export interface Routed {
  readonly wires: ReadonlyMap<string, WireRoute>;
  readonly stretches: readonly Stretch[];
  /** Stretches of each wire, in the order the wire passes them. */
  readonly stretchesOfWire: ReadonlyMap<string, readonly Stretch[]>;
  /** Hottest surroundings of each wire and of each fly lead (PART.PIN), °C, with where. */
  readonly ambients: ReadonlyMap<string, { readonly ambientC: number; readonly at: string }>;
  /** True when every wire that will be on the machine has a length. */
  readonly lengthsComplete: boolean;
}
