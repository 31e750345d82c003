import type { Job, PinPlace, Wire } from "../job/index.ts";
import type { Finding } from "../messages/index.ts";
import type { CompiledJob } from "../operate/index.ts";
import type { Protection } from "../protect/index.ts";
import type { Conductors, Routed } from "../route/index.ts";
import type { EndFitting, Rating, SizedJob, WirePlace } from "../size/index.ts";
import type { CheckLoadRow } from "./checkResult.ts";
import type { DeclaredResult } from "./declaredResults.ts";
import type { FuseFacts } from "./fuseFacts.ts";
import type { WorstCase } from "./worstCase.ts";

/** Everything computed of a job, built once; a judge only reads it. */
export interface Design {
  /** What will be on the machine: everything marked `remove` is gone. */
  readonly job: Job;
  readonly routed: Routed;
  /** Wires and fly leads by id, with the make chosen for each. */
  readonly conductors: Conductors;
  readonly sizing: SizedJob;
  /** The job laid out for solving, at the conditions of the check. One solve at a time. */
  readonly compiled: CompiledJob;
  /** Largest currents and the states they occur in. */
  readonly worst: WorstCase;
  /** What every load does in each state the job itself speaks of. */
  readonly declared: readonly DeclaredResult[];
  readonly protection: Protection;
  /** What each wire and fly lead may carry where it lies, by conductor id. */
  readonly ratings: ReadonlyMap<string, PlacedRating>;
  /** Every fuse between its load and its weakest wire, by id. */
  readonly fuses: readonly FuseFacts[];
  /** Volt drop of every load in its worst state, by id. */
  readonly loads: readonly CheckLoadRow[];
  readonly pins: ReadonlyMap<string, PinPlace>;
  /** Both ends of every wire of the loom, by wire id. */
  readonly fittings: readonly EndFitting[];
  /** Wires of the loom that end at each pin; a pin nothing ends at is absent. */
  readonly wiresAt: ReadonlyMap<string, readonly Wire[]>;
}

/** A rating with the place it was taken at: of all places on a wire's way, the one that lets it carry least. */
export interface PlacedRating extends Rating {
  readonly place: WirePlace;
  /** What one such wire carries by itself in the hottest air on its way: the trade's list, without a list the heat model, A. */
  readonly listA: number;
  /** Every place on its way. */
  readonly places: readonly WirePlace[];
}

/** One question asked of a finished design. */
export type Judge = (design: Design) => readonly Finding[];
