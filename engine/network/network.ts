/**
 * A direct-current network on anonymous nodes. Node 0 is the reference (0 V). Nothing here knows what a branch is made of.
 * A branch carries current from node `a` to node `b`: positive current leaves `a` and enters `b`; v = v(a) − v(b).
 */
export interface Network {
  /** Nodes are 0 .. nodeCount − 1. */
  readonly nodeCount: number;
  readonly branches: readonly Branch[];
  /** Resistance, Ω, tied from every node except 0 to node 0, so that islands stay defined. Part of the network solved. */
  readonly leakOhm: number;
}

export interface Branch {
  readonly id: string;
  readonly a: number;
  readonly b: number;
  readonly law: Law;
}

/** Two-terminal laws, i as a function of v = v(a) − v(b); every one of them rises with v (slope > 0). */
export type Law = OhmLaw | EmfLaw | FilamentLaw | DiodeLaw | CurveLaw;

/** i = v / ohm, ohm > 0. */
export interface OhmLaw {
  readonly kind: "ohm";
  readonly ohm: number;
}

/** i = (v − emfV) / internalOhm, internalOhm > 0: a source whose positive pole is `a` when emfV > 0. */
export interface EmfLaw {
  readonly kind: "emf";
  readonly emfV: number;
  readonly internalOhm: number;
}

/** i = ratedA · u · (u² + eps²)^((exponent − 1)/2), u = v / ratedV. Odd and smooth; exponent 1 is a plain resistor. */
export interface FilamentLaw {
  readonly kind: "filament";
  readonly ratedV: number;
  readonly ratedA: number;
  readonly exponent: number;
  readonly eps: number;
}

/** Anode `a`, cathode `b`: v = j + seriesOhm · i with i = isA · (exp(j / (n · thermalV)) − 1). */
export interface DiodeLaw {
  readonly kind: "diode";
  readonly isA: number;
  readonly n: number;
  readonly seriesOhm: number;
  readonly thermalV: number;
}

/**
 * Straight lines through (v, i) points with v and i both strictly rising; beyond the ends the last slope goes on.
 * @example a regulated source: [[-1, -20], [13.5, -14], [14.4, 0]] …
 */
export interface CurveLaw {
  readonly kind: "curve";
  readonly points: readonly (readonly [vV: number, iA: number])[];
}

/**
 * Relay laid over the network: its contacts are branches whose resistance changes with the coil voltage |v(coilA) − v(coilB)|.
 * Pulls at or above pullInV, drops at or below dropOutV, keeps its position between the two.
 */
export interface RelayRule {
  readonly id: string;
  readonly coilA: number;
  readonly coilB: number;
  readonly pullInV: number;
  readonly dropOutV: number;
  /** Indices into `branches`: closed when pulled / closed when released. */
  readonly closedWhenPulled: readonly number[];
  readonly closedWhenReleased: readonly number[];
  readonly closedOhm: number;
  readonly openOhm: number;
  /** True: starts (and stays, if the voltage allows it between the limits) pulled. */
  readonly held: boolean;
}
