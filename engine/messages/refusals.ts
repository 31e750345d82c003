import type { Refusal } from "./finding.ts";
import { refusalsOfEdits } from "./refusalsOfEdits.ts";
import { refusalsOfFields } from "./refusalsOfFields.ts";
import { refusalsOfReferences } from "./refusalsOfReferences.ts";
import { refusalsOfStates } from "./refusalsOfStates.ts";
import { refusalsOfStock } from "./refusalsOfStock.ts";
import { refusalsOfText } from "./refusalsOfText.ts";

/** Every refusal of the job's reader, of a change and of a state: permanent code, what happened, what to do. `{word}` is filled in from the case. */
export const refusalCatalogue = {
  ...refusalsOfText,
  ...refusalsOfFields,
  ...refusalsOfReferences,
  ...refusalsOfEdits,
  ...refusalsOfStates,
  ...refusalsOfStock,
} as const;

export type RefusalCode = keyof typeof refusalCatalogue;

type WordsIn<Text extends string> = Text extends `${string}{${infer Word}}${infer Rest}`
  ? (Word extends `${string} ${string}` ? WordsIn<`${Word}}`> : Word) | WordsIn<Rest>
  : never;
type WordOf<Code extends RefusalCode> = Exclude<
  | WordsIn<(typeof refusalCatalogue)[Code]["message"]>
  | WordsIn<(typeof refusalCatalogue)[Code]["remedy"]>,
  "found"
>;

/** The words a refusal of this code must be given; `found` comes from its place. */
export type RefusalWords<Code extends RefusalCode> = {
  readonly [Word in WordOf<Code>]: string | number;
};

export interface RefusalPlace {
  readonly pointer: string;
  readonly line: number | null;
  /** What was met, already shortened for reading. */
  readonly found: string;
}

/** One refusal in words. Throws nothing; a word the caller forgot would not compile. */
export function refusal<Code extends RefusalCode>(
  code: Code,
  place: RefusalPlace,
  words: RefusalWords<Code>,
): Refusal {
  const { message, remedy } = refusalCatalogue[code];
  const all: Readonly<Record<string, string | number>> = { ...words, found: place.found };
  return { code, ...place, message: filled(message, all), remedy: filled(remedy, all) };
}

function filled(text: string, words: Readonly<Record<string, string | number>>): string {
  return text.replace(/\{([A-Za-z]+)\}/g, (whole, word: string) =>
    Object.hasOwn(words, word) ? String(words[word]) : whole,
  );
}
