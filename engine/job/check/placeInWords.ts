import { quoted } from "../../messages/index.ts";
import type { JsonPath } from "../read/jsonPointer.ts";

/** What one item of each list is called. */
const ITEM_NAMES: Readonly<Record<string, string>> = {
  stations: "station",
  runs: "run",
  bodies: "body",
  bonds: "bond",
  parts: "part",
  joints: "joint",
  connectors: "connector",
  circuits: "circuit",
  looms: "loom",
  wires: "wire",
  intents: "intent",
  states: "state",
  exclusions: "exclusion",
  build: "build record",
  tests: "test record",
  attachments: "attachment",
};

/** A place for people: `wire W12, from`, `part F1, pins[2].id`; items go by their ids, or by their count where they have none. */
export function placeInWords(root: unknown, path: JsonPath): string {
  const [list, index, ...rest] = path;
  const name = ITEM_NAMES[String(list)];
  if (path.length === 0) return "the document";
  if (name === undefined || typeof index !== "number") return steps(path);
  const id = idOf(valueAt(root, [list!, index]));
  const item = id === null ? `${name} number ${index + 1}` : `${name} ${id}`;
  return rest.length === 0 ? item : `${item}, ${steps(rest)}`;
}

function steps(path: JsonPath): string {
  return path
    .map((step, i) => {
      if (typeof step === "number") return `[${step}]`;
      const name = step.length > 40 ? quoted(step) : step;
      return i === 0 ? name : `.${name}`;
    })
    .join("");
}

function idOf(item: unknown): string | null {
  const id = valueAt(item, ["id"]);
  return typeof id === "string" && id.length <= 32 ? id : null;
}

/** The value at a path; undefined where there is none. */
export function valueAt(root: unknown, path: JsonPath): unknown {
  let value = root;
  for (const step of path) {
    if (typeof value !== "object" || value === null || !Object.hasOwn(value, step)) {
      return undefined;
    }
    value = (value as Record<string | number, unknown>)[step];
  }
  return value;
}
