import type { Operation } from "../edit/operation.ts";
import type { DropClass, Valued } from "../job.ts";
import type { partBuilder } from "./partBuilder.ts";
import type { Terms } from "./terms.ts";

/** A ready group of parts and wires, asked about in a few questions. */
export interface CircuitPattern {
  readonly id: string;
  readonly name: string;
  /** What it is good for, in one sentence. */
  readonly what: string;
  readonly dropClass: DropClass;
  readonly asks: readonly PatternAsk[];
  readonly build: (builder: PatternBuilder, answers: PatternAnswers) => void;
}

export interface PatternAsk {
  readonly id: string;
  readonly word: string;
  readonly kind: "pin" | "wire" | "station" | "number";
  /** Of a number. */
  readonly unit?: string;
  readonly howTo?: string;
  /** A pin that may be left empty; a number without which the part is asked for later. */
  readonly isOptional?: boolean;
}

export interface PatternAnswers {
  /** Pin, wire or station by the id of the question. */
  readonly text: (id: string) => string;
  readonly figure: (id: string) => Valued | undefined;
}

export type PatternBuilder = ReturnType<typeof partBuilder>;

export type PatternMade =
  | {
      readonly ok: true;
      readonly operation: Operation;
      readonly parts: readonly string[];
      /** When its live is there: its loads are said to work then. Null: not told, and nothing is said of them. */
      readonly live: Terms | null;
    }
  | { readonly ok: false; readonly missing: readonly string[] };
