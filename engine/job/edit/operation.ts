import type { JsonPath } from "../read/jsonPointer.ts";

/** Lists of the job whose items an operation can name by id. */
export const EDITED_LISTS = [
  "stations",
  "runs",
  "bodies",
  "bonds",
  "parts",
  "joints",
  "connectors",
  "circuits",
  "looms",
  "wires",
  "intents",
  "states",
  "exclusions",
  "build",
  "tests",
  "attachments",
] as const;

export type EditedList = (typeof EDITED_LISTS)[number];

export interface AddOperation {
  readonly op: "add";
  readonly list: EditedList;
  /** The whole item, its id included. */
  readonly item: unknown;
}

export interface RemoveOperation {
  readonly op: "remove";
  readonly list: EditedList;
  readonly id: string;
}

/**
 * One field set, or taken away where `value` is absent. `path` counts from the item; with `list: "job"` from the document, for what
 * is in no list (machine, supply, decisions, layout …). Members of inner lists are replaced by index; to lengthen or shorten an
 * inner list, set it whole.
 */
export interface SetOperation {
  readonly op: "set";
  readonly list: EditedList | "job";
  /** The item's id; absent for the job itself. */
  readonly id?: string;
  readonly path: JsonPath;
  readonly value?: unknown;
}

/** Several operations as one step: only the job at the end must be readable. The name is for people, for an undo list. */
export interface BatchOperation {
  readonly op: "batch";
  readonly name: string;
  readonly operations: readonly Operation[];
}

/** Every change of a job is one of these, and each has an inverse that is one of these. */
export type Operation = AddOperation | RemoveOperation | SetOperation | BatchOperation;
