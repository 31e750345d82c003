import type { Figure } from "../messages/index.ts";

/** Where a fitting comes from: a person, or what the thing at the end of the wire offers. `area`: nothing is stated there, so the trade's usual one for the size. */
export type FittingBasis =
  | "person"
  | "stud"
  | "fly-lead"
  | "connector"
  | "joint"
  | "soldered-joint"
  | "area";

/** What does not go together. Wording and weight are for whoever asks. */
export type FittingProblem =
  /** Copper thinner than the barrel holds. */
  | "below-range"
  /** Copper thicker than any barrel of the kind. */
  | "above-range"
  /** Thicker than the smaller barrel, thinner than the next: the next is taken. */
  | "between-ranges"
  /** Outside diameter of the wire is not one a seal closes on. */
  | "insulation"
  /** A ring, but nobody said for which stud. */
  | "stud-not-stated";

/** One end of one wire: what is fitted, how, and what must hold. */
export interface EndFitting {
  readonly wire: string;
  readonly end: "from" | "to";
  readonly pin: string;
  /** Wires crimped into the same barrel, sorted; empty where it is alone. */
  readonly sharedWith: readonly string[];
  readonly kind: "blade" | "bullet" | "ring" | "sealed" | "splice" | "soldered";
  /** Row of tables/terminals; `ring-` and a row of tables/studs; null: a splice barrel, a soldered end, or a ring of unknown hole. */
  readonly terminal: string | null;
  /** "6.3 x 0.8 mm", "hole 6.5 mm for M6". Empty where nothing is known. */
  readonly size: string;
  readonly half: "receptacle" | "plug contact" | "socket contact" | "mate of the fly lead" | null;
  readonly tool: string;
  readonly joining: "crimped" | "soldered" | "screwed" | "twisted" | "clamped";
  /** A sleeve, boot or seal that has to be on the wire before the terminal is. */
  readonly sleeveFirst: "sleeve" | "seal" | null;
  readonly stripMm: number;
  /** All copper in the barrel, mm²: nominal where the make has a nominal size. */
  readonly barrelAreaMm2: number;
  /** What the barrel holds, mm²; null where no row says. */
  readonly wireFromMm2: number | null;
  readonly wireToMm2: number | null;
  /** Least force a sample crimp of this wire must hold, N; null where no row covers the size or it is not crimped. */
  readonly pullN: number | null;
  readonly pull: Figure | null;
  readonly chosenBy: "person" | "engine";
  readonly basis: FittingBasis;
  readonly problem: FittingProblem | null;
}
