import type { JsonPath } from "../read/jsonPointer.ts";
import type { JobIndex } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

interface Named {
  readonly id: string;
  readonly path: JsonPath;
}

const LISTS = [
  "stations",
  "runs",
  "bonds",
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

const PIN_OWNERS = ["parts", "joints", "connectors", "bodies"] as const;

/** An id given twice where only one thing may have it. Parts, joints, connectors and bodies share one space, for a pin is written OWNER.PIN. */
export function duplicateIds(index: JobIndex): readonly Problem[] {
  const { job } = index;
  const listed = (list: (typeof LISTS)[number] | (typeof PIN_OWNERS)[number]): readonly Named[] =>
    job[list].map((item, i) => ({ id: item.id, path: [list, i] }));
  const owners = PIN_OWNERS.flatMap(listed);
  const spaces = [
    { items: owners, space: "parts, joints, connectors and bodies share one set of ids" },
    ...LISTS.map((list) => ({ items: listed(list), space: `within ${list} each id is used once` })),
    ...insideOwners(index),
  ];
  const accepted = job.decisions.accepted ?? [];
  const acceptedItems = accepted.map(({ id }, i) => ({ id, path: ["decisions", "accepted", i] }));
  spaces.push({ items: acceptedItems, space: "each acceptance has its own id" });
  return spaces.flatMap(({ items, space }) => duplicatesIn(index, items, space));
}

function insideOwners({ job }: JobIndex): { items: readonly Named[]; space: string }[] {
  const words = (list: string, i: number, field: string, ids: readonly string[]) => ({
    items: ids.map((id, k) => ({ id, path: [list, i, field, k] })),
    space: `within ${field} each id is used once`,
  });
  const idsOf = (items: readonly { readonly id: string }[]) => items.map((item) => item.id);
  return [
    ...job.parts.map((part, i) => words("parts", i, "pins", idsOf(part.pins))),
    ...job.parts.flatMap((part, i) =>
      part.kind === "switch" ? [words("parts", i, "positions", idsOf(part.positions))] : [],
    ),
    ...job.joints.map((joint, i) => words("joints", i, "ways", joint.ways)),
    ...job.connectors.map((item, i) => words("connectors", i, "cavities", item.cavities)),
    ...job.bodies.map((body, i) => words("bodies", i, "points", idsOf(body.points))),
  ];
}

function duplicatesIn(index: JobIndex, items: readonly Named[], space: string): readonly Problem[] {
  const first = new Map<string, JsonPath>();
  return items.flatMap(({ id, path }) => {
    const other = first.get(id);
    if (other === undefined) {
      first.set(id, path);
      return [];
    }
    const words = () => ({ place: index.place(path), id, other: ordinal(other), space });
    return [problem("duplicate-id", path, id, words)];
  });
}

/** The earlier holder, by its list and place: both have the same id, so the id would not tell them apart. */
function ordinal(path: JsonPath): string {
  const place = Number(path.at(-1)) + 1;
  return `number ${place} of ${path.filter((step) => typeof step === "string").at(-1)}`;
}
