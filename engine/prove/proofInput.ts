import type { Job } from "../job/index.ts";
import type { Protection } from "../protect/index.ts";
import type { Conductors, Routed } from "../route/index.ts";

/** A job with everything the proof leans on, made before it: lengths, copper, and who guards whom. */
export interface ProofInput {
  /** What will be on the machine. */
  readonly job: Job;
  readonly routed: Routed;
  readonly conductors: Conductors;
  readonly protection: Protection;
}

export interface ProofOptions {
  /** Draws of tolerance and of states compared with the full product start from this. Default 1. */
  readonly seed?: number;
  /** Draws of the tolerance part. Default 32. */
  readonly toleranceSampleCount?: number;
  /** Whether changes that mend a `stop` are tried. Default true. */
  readonly tryRemedies?: boolean;
}
