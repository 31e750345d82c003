import type { Load } from "../job/index.ts";
import type { QuickState } from "../operate/index.ts";
import type { LoadDrop } from "./loadDrop.ts";

/** A largest current and the state it occurs in. */
export interface WorstCurrent {
  /** A, ≥ 0. */
  readonly currentA: number;
  /** State as `operate` understands it; null where no current was ever seen. */
  readonly state: QuickState | null;
  /** Volts the battery was held at, where it was not the full battery at rest. */
  readonly batteryV: number | null;
}

/** What a load got over all states that were solved. */
export interface LoadSeen {
  readonly load: Load;
  /** Largest loss on its ways in a state it should work in; null where it never had a way of its own to the source. */
  readonly drop: LoadDrop | null;
  readonly dropState: QuickState | null;
  /** Buttons held and flashers lit in that state: what lasts a moment only. */
  readonly dropMomentCount: number;
  /** States in which it worked. */
  readonly litCount: number;
  readonly mostW: number;
  readonly mostState: QuickState | null;
  readonly mostA: number;
  /** Largest volts the wrong way round, of a one-way load. */
  readonly reversedV: number;
  /** Of the states it works in, the one with the least else switched on: faults show best there. */
  readonly quietState: QuickState | null;
}

/** A position of the switches in which the battery is shorted with nothing broken. */
export interface ShortedState {
  readonly state: QuickState;
  readonly currentA: number;
  /** Contacts that carry the short, PART:A-B. */
  readonly contacts: readonly string[];
}

export type Currents = ReadonlyMap<string, WorstCurrent>;

/** Largest currents over the states that were solved. Cranking stands apart: it lasts seconds. */
export interface WorstCase {
  /** By conductor id (wire, or PART.PIN of a fly lead). */
  readonly conductors: Currents;
  readonly crankingConductors: Currents;
  /** By fuse id. */
  readonly fuses: Currents;
  readonly crankingFuses: Currents;
  /** By contact, PART:A-B. */
  readonly contacts: Currents;
  readonly crankingContacts: Currents;
  /** By connector cavity (CONNECTOR.CAVITY) and joint way (JOINT.WAY). */
  readonly joints: Currents;
  /** By load. */
  readonly loads: ReadonlyMap<string, LoadSeen>;
  /** States in which switches short the battery: kept out of every largest current. */
  readonly shorted: readonly ShortedState[];
  readonly stateCount: number;
  /** False where the search stopped at its bound. */
  readonly complete: boolean;
}
