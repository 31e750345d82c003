import type { QuickState } from "../operate/index.ts";

/** A largest current and the state it occurs in. */
export interface WorstCurrent {
  /** A, ≥ 0. */
  readonly currentA: number;
  /** State as `operate` understands it; null where the current was reckoned, not solved. */
  readonly state: QuickState | null;
}

/** Largest lasting currents over the states that were solved. Cranking stands apart: it lasts seconds. */
export interface WorstCase {
  /** By conductor id (wire, or PART.PIN of a fly lead). */
  readonly conductors: ReadonlyMap<string, WorstCurrent>;
  readonly crankingConductors: ReadonlyMap<string, WorstCurrent>;
  /** By fuse id. */
  readonly fuses: ReadonlyMap<string, WorstCurrent>;
  /** By contact, PART:A-B. */
  readonly contacts: ReadonlyMap<string, WorstCurrent>;
  /** By connector cavity (CONNECTOR.CAVITY) and joint way (JOINT.WAY). */
  readonly joints: ReadonlyMap<string, WorstCurrent>;
  readonly stateCount: number;
}
