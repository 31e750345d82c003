import { idMaker } from "../edit/idMaker.ts";
import type { Operation } from "../edit/operation.ts";
import type { Job, Status } from "../job.ts";
import { guardTemplates } from "./guardTemplates.ts";
import { lampTemplates } from "./lampTemplates.ts";
import { loadTemplates } from "./loadTemplates.ts";
import type { PartTemplate, TemplateAnswers } from "./partTemplate.ts";
import { supplyTemplates } from "./supplyTemplates.ts";
import { switchTemplates } from "./switchTemplates.ts";

/** Generic parts, without a maker and without a figure: what a part of each sort has for terminals, and what must be read or measured of it. */
export const partCatalogue: readonly PartTemplate[] = [
  ...lampTemplates,
  ...switchTemplates,
  ...guardTemplates,
  ...loadTemplates,
  ...supplyTemplates,
];

/** A template as a screen lists it. */
export type ListedTemplate = Omit<PartTemplate, "make">;

/** Templates whose name, group or other words hold every word looked for; names that begin with it first. */
export function foundTemplates(words: string): readonly ListedTemplate[] {
  const asked = words.toLowerCase().split(/\s+/).filter(Boolean);
  const text = ({ name, group, words: more }: PartTemplate): string =>
    `${name} ${group} ${more}`.toLowerCase();
  const rank = ({ name }: PartTemplate): number =>
    asked.length > 0 && name.toLowerCase().startsWith(asked[0]!) ? 0 : 1;
  return partCatalogue
    .filter((one) => asked.every((word) => text(one).includes(word)))
    .map((one, i) => ({ one, i }))
    .sort((p, q) => rank(p.one) - rank(q.one) || p.i - q.i)
    .map(({ one: { make: _, ...listed } }) => listed);
}

export type PartMade =
  | { readonly ok: true; readonly operation: Operation; readonly id: string }
  | { readonly ok: false; readonly missing: readonly string[] };

/**
 * A part of the catalogue put on the machine.
 *
 * @param answers figures with where they come from, by the template's asks
 * @returns the words of what must still be entered, where something without which the part cannot be written down is missing
 */
export function addFromCatalogue(
  job: Job,
  choice: {
    readonly template: string;
    readonly station?: string;
    readonly name?: string;
    readonly status?: Status;
    readonly answers: TemplateAnswers;
  },
): PartMade {
  const template = partCatalogue.find(({ id }) => id === choice.template);
  if (template === undefined) return { ok: false, missing: [choice.template] };
  const missing = template.asks
    .filter(({ id, isNeeded }) => isNeeded && choice.answers[id] === undefined)
    .map(({ word }) => word);
  if (missing.length > 0) return { ok: false, missing };
  const body = template.make({ supply: job.supply, answers: choice.answers });
  const id = idMaker(job)(template.stem);
  const item = {
    ...body,
    id,
    ...(choice.name ? { name: choice.name } : {}),
    ...(choice.station === undefined ? {} : { station: choice.station }),
    status: choice.status ?? "keep",
  };
  return { ok: true, id, operation: { op: "add", list: "parts", item } };
}
