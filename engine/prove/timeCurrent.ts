import type { Duration } from "../heat/index.ts";
import type { Figure } from "../messages/index.ts";

/** A point of a curve of time against current; both axes are read on logarithmic paper. */
export interface TimeCurrentPoint {
  readonly currentA: number;
  readonly timeS: number;
}

/** A point of a fuse's band. Beyond its last published gate constant I²t is only the usual reading. */
export interface BandPoint extends TimeCurrentPoint {
  readonly published: boolean;
}

/** When a fuse opens: between its fastest and its slowest. */
export interface FuseBandCurve {
  /** In rising order of current; empty: nobody published a shortest time. Beyond the last point it may open at once. */
  readonly fastest: readonly BandPoint[];
  /** In rising order of current. At smaller currents than the first it is never promised to open. */
  readonly slowest: readonly BandPoint[];
  /** It carries this for good, A; null: not published. */
  readonly carriesA: number | null;
  /** Smallest current at which it is promised to open, A; null: none is. */
  readonly opensFromA: number | null;
  /** Largest current with a published longest time, A; null: none. */
  readonly publishedToA: number | null;
  readonly family: string;
}

/** A point of a wire's limit: so long it may carry so much, judged by the limit of that duration. */
export interface LimitPoint extends TimeCurrentPoint {
  readonly duration: Duration;
}

/** Wires of one make behind the fuse, by the lowest limit of any of them in any place. */
export interface WireLimitCurve {
  readonly makeId: string;
  readonly areaMm2: number;
  readonly insulation: string;
  /** The one that may carry least for ever, where it lies worst. */
  readonly wire: string;
  /** Stretch of loom; null: alone. */
  readonly stretch: string | null;
  readonly ambientC: number;
  /** Its hottest healthy state, °C; null: it has none, and then there is no curve. */
  readonly startC: number | null;
  /** Every wire of this make the fuse guards, sorted. */
  readonly wires: readonly string[];
  /** True: returns that this fuse feeds only where they touch something it feeds; their own load is counted in. */
  readonly onlyTouched: boolean;
  /** Largest current it may carry for ever, A. */
  readonly foreverA: number;
  /** In rising order of current, falling in time, from `foreverA` on. */
  readonly points: readonly LimitPoint[];
}

/** Currents between two bounds at which the fuse may outlast a wire. */
export interface DangerRegion {
  readonly makeId: string;
  readonly fromA: number;
  readonly toA: number;
  /** Lower edge: the wire's limit; upper edge: the slowest the fuse may be (the top of the axis where it need not open). */
  readonly lower: readonly TimeCurrentPoint[];
  readonly upper: readonly TimeCurrentPoint[];
}

export type ProspectiveKind =
  | "largest load"
  | "short at the fuse"
  | "least short, battery full"
  | "least short, battery weak and cold";

/** A current that can really flow through the fuse. */
export interface ProspectiveCurrent {
  readonly kind: ProspectiveKind;
  readonly currentA: number;
  /** Pin that is shorted to earth; null for a load. */
  readonly pin: string | null;
}

/** Everything a plot of one fuse against its wires shows: plain figures, no marks. */
export interface TimeCurrent {
  readonly fuse: string;
  readonly name: string;
  /** What it carries by the largest reading of its number, A. */
  readonly ratingA: number;
  readonly type: string;
  readonly marking: string;
  readonly band: FuseBandCurve;
  /** Lowest limit first. */
  readonly wires: readonly WireLimitCurve[];
  readonly danger: readonly DangerRegion[];
  /** In rising order. */
  readonly currents: readonly ProspectiveCurrent[];
  /** Decades that hold it all. */
  readonly axes: {
    readonly currentFromA: number;
    readonly currentToA: number;
    readonly timeFromS: number;
    readonly timeToS: number;
  };
  /** Limits by duration: seconds are published, hours and without end remembered. */
  readonly limits: readonly Figure[];
  readonly bandSource: readonly { readonly source: string; readonly confidence: string }[];
}
