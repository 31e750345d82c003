import type { WorkingStep } from "../messages/index.ts";
import type { Conductors, MakeFields } from "../route/index.ts";
import type { DesignCurrent, DesignCurrents, DesignWay } from "./designCurrents.ts";
import type { DropLimit } from "./dropLimit.ts";
import type { FitQuestion, Shortfall } from "./makeFits.ts";
import type { RateKept } from "./rateKept.ts";
import type { Rating } from "./ratingOf.ts";

/** The size of one wire and why. */
export interface Sizing {
  readonly wire: string;
  readonly makeId: string;
  readonly sizedBy: "person" | "engine";
  /** What keeps it from being the next smaller; "stock": there is no smaller. */
  readonly governedBy: "rating" | "drop" | "mechanical" | "fuse" | "person" | "stock";
  readonly continuous: DesignCurrent;
  readonly cranking: DesignCurrent;
  /** At the place on its way where it may carry least. */
  readonly rating: Rating;
  readonly ratingAt: string;
  /** What even this make falls short of: a person's choice, or a stock without a large enough size. */
  readonly shortOf: readonly Shortfall[];
  readonly working: readonly WorkingStep[];
}

/** Volt drop of one load on one way of feeding it, at design currents and chosen sizes. */
export interface LoadSizing extends DesignWay {
  readonly limit: DropLimit;
  /** Null where a wire on the way has no length. */
  readonly feedV: number | null;
  readonly backV: number | null;
  /** Contacts, fuses, joints and bonds take more than their share: copper is not the remedy. */
  readonly contactsExceed: boolean;
  /** No size of the stock meets the wires' share; its wires are sized as if it were not there. */
  readonly unmet: boolean;
}

export interface SizedJob {
  readonly conductors: Conductors;
  /** Make of every wire the engine sized. */
  readonly sizes: ReadonlyMap<string, string>;
  readonly sizing: ReadonlyMap<string, Sizing>;
  readonly loads: readonly LoadSizing[];
  /** Copper of the wires of the loom, g; wires of unknown length are not in it. */
  readonly copperG: number;
  /** No sizes from this stock that meet the same limits hold less copper. */
  readonly leastCopperG: number;
  readonly exact: boolean;
  /** Copper as it was while nothing was chosen, and what flows in it: of no interest to a reader, all the dearer to find again. */
  readonly trial: Conductors;
  readonly currents: DesignCurrents;
  readonly rate: RateKept;
  readonly asked: ReadonlyMap<string, AskedSize>;
}

/** What was asked of a wire before volt drop, and which makes of the stock fit. */
export interface AskedSize {
  readonly makes: readonly MakeFields[];
  readonly question: FitQuestion;
  readonly fits: readonly MakeFields[];
}
