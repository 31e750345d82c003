import type { Figure } from "./figure.ts";

/** `stop`: must not be powered. `mend`: put right before it is used. `advise`: worth knowing. `not-proven`: only a remembered figure could decide. */
export type Severity = "stop" | "mend" | "advise" | "not-proven";

/** What a finding is about. `id` is the permanent id in the job (`PART.PIN` for a pin, `PART:A-B` for a load element). */
export interface Subject {
  readonly kind:
    | "job"
    | "supply"
    | "station"
    | "run"
    | "part"
    | "pin"
    | "load"
    | "fuse"
    | "wire"
    | "flyLead"
    | "joint"
    | "connector"
    | "body"
    | "bond"
    | "circuit"
    | "loom";
  readonly id: string;
}

/** One named input of a sum: where its value came from is a table row, a field of the job or an earlier step. */
export interface WorkingInput {
  readonly name: string;
  readonly value: number | string;
  readonly unit: string;
  readonly from: string;
}

/** One line of working: equation → inputs → value. A chain of these opens any number. */
export interface WorkingStep {
  readonly name: string;
  readonly equation: string;
  readonly inputs: readonly WorkingInput[];
  readonly value: number;
  readonly unit: string;
}

/** The smallest change that was tried, whether it cured the finding, and the numbers it led to. */
export interface Remedy {
  /** Which of the catalogue's remedies of this code it is. */
  readonly kind?: string;
  readonly change: readonly unknown[];
  readonly cures: boolean | null;
  readonly newNumbers: Readonly<Record<string, number | string | null>>;
  /** The change in words, made by `messages`. */
  readonly message?: string;
}

/** A fact about the job that somebody must act on. Data only: `messages` turns it into a sentence. */
export interface Finding {
  readonly code: string;
  readonly severity: Severity;
  readonly subject: Subject;
  readonly also: readonly string[];
  /** The operating state it was found in, as `operate` arguments; null when it holds in every state. */
  readonly state: Readonly<Record<string, string>> | null;
  /** Every figure the sentence needs; keys end in their unit. Strings for names. */
  readonly numbers: Readonly<Record<string, number | string | boolean | null>>;
  readonly limit: Figure | null;
  readonly leansOnMemory: boolean;
  readonly acceptable: boolean;
  readonly accepted: { readonly reason: string; readonly by: string } | null;
  readonly working: readonly WorkingStep[];
  readonly remedies: readonly Remedy[];
  readonly reproduce: readonly string[] | null;
}

/** Input that cannot be computed: where it stands, what was met, what would do instead. */
export interface Refusal {
  readonly code: string;
  /** JSON pointer into the document, or the name of the argument. */
  readonly pointer: string;
  /** Line in the text, from 1; null when there is no text. */
  readonly line: number | null;
  readonly found: string;
  readonly message: string;
  readonly remedy: string;
}
