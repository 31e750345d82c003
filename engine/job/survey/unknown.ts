import type { EditedList } from "../edit/operation.ts";
import type { JsonPath } from "../read/jsonPointer.ts";

/** What somebody has to find out, and where the answer goes. */
export interface Unknown {
  /** The same as long as the same thing is unknown. */
  readonly id: string;
  readonly group: UnknownGroup;
  readonly subject: {
    readonly kind: "run" | "wire" | "part" | "joint" | "bond";
    readonly id: string;
  };
  readonly what: string;
  readonly howTo: string;
  /** What stands there now as a guess; null: nothing. */
  readonly guess: number | null;
  readonly answer: UnknownAnswer;
}

export type UnknownGroup =
  | "runs"
  | "wires"
  | "fuses"
  | "switches"
  | "generator"
  | "battery"
  | "loads"
  | "earths"
  | "places";

/** The field an answer is typed into. */
export type UnknownAnswer =
  | { readonly kind: "length"; readonly put: Put }
  | { readonly kind: "number"; readonly unit: string; readonly put: Put }
  | { readonly kind: "wire"; readonly put: Put }
  | {
      readonly kind: "choice";
      readonly options: readonly { readonly value: string; readonly word: string }[];
      readonly put: Put;
    }
  | { readonly kind: "point"; readonly put: Put }
  | { readonly kind: "contacts"; readonly part: string };

/** Where an answer is written, and as what. */
export interface Put {
  readonly list: EditedList;
  readonly id: string;
  readonly path: JsonPath;
  readonly as: "valued" | "plain" | "point-current" | "new-point" | "element" | "make";
  /** What the answer is put into: a point with its speed, pins of an element. */
  readonly within?: unknown;
}
