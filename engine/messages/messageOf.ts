import { catalogue } from "./catalogue.generated.ts";
import type { Figure } from "./figure.ts";
import type { Finding, Remedy } from "./finding.ts";
import { numberInWords, quantityInWords } from "./numberInWords.ts";

/** One code of the catalogue: its sentences, the words of its remedies, and why it matters. */
export interface CatalogueEntry {
  readonly severities: readonly string[];
  readonly lines: readonly { readonly text: string; readonly optional: boolean }[];
  readonly remedies: Readonly<Record<string, string>>;
  readonly explanation: readonly string[];
}

type Values = Readonly<Record<string, number | string | boolean | null | undefined>>;

const MOST_NAMES_COUNT = 6;
const MEMORY = "remembered, not confirmed";

/**
 * What a finding says, in sentences.
 *
 * @throws Error for a code that is not in the catalogue or a sentence with a word missing: both are bugs.
 */
export function messageOf(finding: Finding): string {
  const { lines } = entryOf(finding.code);
  const values = valuesOf(finding);
  return lines
    .map(({ text, optional }) =>
      optional && !isComplete(text, values) ? "" : filled(text, values),
    )
    .filter((line) => line !== "")
    .join(" ");
}

/** What a remedy does, in a sentence; null where the catalogue has no words for it. */
export function remedyMessageOf(finding: Finding, remedy: Remedy): string | null {
  const text = entryOf(finding.code).remedies[remedy.kind ?? ""];
  return text === undefined ? null : filled(text, { ...valuesOf(finding), ...remedy.newNumbers });
}

/** Why a code matters, paragraph by paragraph. */
export function explanationOf(code: string): readonly string[] {
  return entryOf(code).explanation;
}

/** Every code the catalogue knows, sorted. */
export const findingCodes: readonly string[] = Object.keys(catalogue).sort();

/** Severities a code may have. */
export function severitiesOf(code: string): readonly string[] {
  return entryOf(code).severities;
}

function entryOf(code: string): CatalogueEntry {
  const entry = catalogue[code];
  if (entry === undefined) throw new Error(`no finding "${code}" in the catalogue`);
  return entry;
}

function valuesOf(finding: Finding): Values {
  const { limit } = finding;
  return {
    ...finding.numbers,
    subject: finding.subject.id,
    also: finding.also.length === 0 ? null : namesInWords(finding.also),
    limit: limit === null ? null : quantityInWords(limit.value, limit.unit),
    limitSource: limit === null ? null : sourceInWords(limit),
  };
}

/** A few names, and how many more there are. */
export function namesInWords(names: readonly string[]): string {
  const more = names.length - MOST_NAMES_COUNT;
  if (more <= 1) return names.join(", ");
  return `${names.slice(0, MOST_NAMES_COUNT).join(", ")} and ${more} more`;
}

/** Whose limit it is, in few words (the whole source stands with the limit); a remembered one is said to be remembered. */
function sourceInWords({ table, source, confidence }: Figure): string {
  if (table === "job") return "stated in the job";
  const named = source.split(/[,:;]/, 1)[0]!;
  if (confidence !== "memory") return named;
  return named === "remembered" ? MEMORY : `${named}; ${MEMORY}`;
}

const WORD = /%([A-Za-z][A-Za-z0-9]*)%/g;

function isComplete(text: string, values: Values): boolean {
  return [...text.matchAll(WORD)].every(([, word]) => {
    const value = values[word!];
    return value !== undefined && value !== null && value !== "";
  });
}

const NUMBERED = /%(\w*Count)%((?:(?!%\w*Count%).)*)/g;
const ONE_OR_MANY = /\[([^|\]]*)\|([^\]]*)\]/g;

/** `[one|many]` after a count: the words for one thing, or for another number of them. */
function numbered(text: string, values: Values): string {
  return text.replace(NUMBERED, (_, count: string, rest: string) => {
    const chosen = rest.replace(ONE_OR_MANY, (__, one: string, many: string) =>
      values[count] === 1 ? one : many,
    );
    return `%${count}%${chosen}`;
  });
}

function filled(text: string, values: Values): string {
  return numbered(text, values).replace(WORD, (_, word: string) => {
    const value = values[word];
    if (value === undefined || value === null || typeof value === "boolean") {
      throw new Error(`a sentence wants %${word}%, which the finding does not say: ${text}`);
    }
    return numberInWords(word, value);
  });
}
