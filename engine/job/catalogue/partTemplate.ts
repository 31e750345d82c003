import type { Part, Supply, Valued } from "../job.ts";

/** One figure asked of a person before a part is put on the machine. */
export interface TemplateAsk {
  readonly id: string;
  readonly word: string;
  /** "A", "V", "W", "ohm", "Ah", "uF". */
  readonly unit: string;
  readonly howTo: string;
  /** Without it the part cannot be written down; else it stays on the list of what is unknown. */
  readonly isNeeded: boolean;
}

export type TemplateAnswers = Readonly<Record<string, Valued>>;

/** What a template knows of the machine when a part is made. */
export interface TemplateContext {
  readonly supply: Supply;
  readonly answers: TemplateAnswers;
}

/** Everything of a part but what makes it this one: id, station, status. */
export type PartBody = Part extends infer One
  ? One extends Part
    ? Omit<One, "id" | "station" | "status">
    : never
  : never;

/** A generic part: its pins and what must be asked of it. It brings no figure of its own. */
export interface PartTemplate {
  readonly id: string;
  readonly name: string;
  readonly group: TemplateGroup;
  /** Other words somebody may look for it with. */
  readonly words: string;
  /** Beginning of the ids of such parts. */
  readonly stem: string;
  readonly asks: readonly TemplateAsk[];
  readonly make: (context: TemplateContext) => PartBody;
}

export type TemplateGroup =
  | "lamps"
  | "switches"
  | "fuses and relays"
  | "ignition"
  | "battery and charging"
  | "starting"
  | "horn and extras";

export const pins = (...ids: readonly string[]) => ids.map((id) => ({ id }));

/** An optional answer as a field: absent where nobody gave it. */
export const answered = <Key extends string>(
  key: Key,
  answer: Valued | undefined,
): { readonly [K in Key]?: Valued } =>
  answer === undefined ? {} : ({ [key]: answer } as { readonly [K in Key]?: Valued });

/** A load between two pins; without ohms it stays empty and is asked for. */
export const elementOf = (a: string, b: string, ohm: Valued | undefined) =>
  ohm === undefined ? [] : [{ pins: [a, b] as const, ohm }];
