/** How far a published figure may be leaned on. `common practice` is a fact of the trade, `own` a rule of this project. */
export type Confidence =
  | "seen"
  | "secondary"
  | "memory"
  | "derived"
  | "computed"
  | "common practice"
  | "own";

/** One figure from outside with everything a reader needs to open it: what, how much, where from, how sure. */
export interface Figure {
  readonly value: number;
  readonly unit: string;
  readonly table: string;
  readonly row: string;
  readonly source: string;
  readonly place: string;
  readonly confidence: Confidence;
}
