import type { Job } from "../job/index.ts";
import type { FeedEdge } from "./feedGraph.ts";

/** More combinations than this in one block are not enumerated: every contact then counts as closed, which can only add paths. */
const MOST_COMBINATIONS = 4096;
/** Position name that stands for "every contact closed" where there were too many combinations. */
export const ALL_CLOSED = "any";

interface Controller {
  readonly id: string;
  readonly positions: readonly string[];
}

/** Positions of the switches and relays of some edges that can be worst: those whose closed contacts no other position contains. */
export function worstAssignments(
  edges: readonly FeedEdge[],
): readonly Readonly<Record<string, string>>[] {
  const controllers = controllersOf(edges);
  const count = controllers.reduce((product, { positions }) => product * positions.length, 1);
  if (count > MOST_COMBINATIONS) {
    return [Object.fromEntries(controllers.map(({ id }) => [id, ALL_CLOSED]))];
  }
  let all: Readonly<Record<string, string>>[] = [{}];
  for (const { id, positions } of controllers) {
    all = all.flatMap((sofar) => positions.map((position) => ({ ...sofar, [id]: position })));
  }
  return all;
}

function controllersOf(edges: readonly FeedEdge[]): readonly Controller[] {
  const closedBy = new Map<string, Map<string, Set<number>>>();
  edges.forEach(({ contact }, edge) => {
    if (contact === null) return;
    const positions = closedBy.get(contact.controller) ?? new Map<string, Set<number>>();
    for (const position of contact.closedIn) {
      positions.set(position, (positions.get(position) ?? new Set()).add(edge));
    }
    closedBy.set(contact.controller, positions);
  });
  return [...closedBy]
    .sort(([left], [right]) => (left < right ? -1 : 1))
    .map(([id, positions]) => ({ id, positions: notContained(positions) }));
}

function notContained(positions: ReadonlyMap<string, ReadonlySet<number>>): readonly string[] {
  const list = [...positions].sort(([left], [right]) => (left < right ? -1 : 1));
  return list
    .filter(([, closed], i) =>
      list.every(([, other], k) => {
        if (k === i || ![...closed].every((edge) => other.has(edge))) return true;
        return other.size === closed.size && k > i;
      }),
    )
    .map(([id]) => id);
}

/** Whether the job says that these positions cannot stand together. Rules that also name the engine do not decide here. */
export function isExcluded(job: Job, positions: Readonly<Record<string, string>>): boolean {
  return job.exclusions.some(
    (rule) =>
      rule.engine === undefined &&
      Object.keys(rule.positions).length > 0 &&
      Object.entries(rule.positions).every(([part, list]) => list.includes(positions[part] ?? "")),
  );
}
