import type { PartOf } from "../job.ts";
import type { Operation } from "./operation.ts";

type Pair = readonly [string, string];
type Switch = PartOf<"switch">;

/** Pins joined with each other in one position, each group in the order of `pins`; pins joined with none are in no group. */
export function contactGroups(
  pins: readonly string[],
  joins: readonly Pair[],
): readonly (readonly string[])[] {
  const groupOf = new Map(pins.map((pin) => [pin, new Set([pin])]));
  for (const [a, b] of joins) {
    const [first, second] = [groupOf.get(a), groupOf.get(b)];
    if (first === undefined || second === undefined || first === second) continue;
    for (const pin of second) {
      first.add(pin);
      groupOf.set(pin, first);
    }
  }
  return [...new Set(groupOf.values())]
    .filter(({ size }) => size > 1)
    .map((group) => pins.filter((pin) => group.has(pin)));
}

/**
 * One reading of a meter put into a contact table: pins `a` and `b` in one position, joined or not. Joining two groups makes one of them. Where two joined
 * pins are said to be apart, `b` leaves its group and the others of it stay joined.
 */
export function toggleContact(
  part: Switch,
  change: { readonly position: string; readonly a: string; readonly b: string },
): Operation {
  const { position, a, b } = change;
  const pins = part.pins.map(({ id }) => id);
  const positions = part.positions.map((row) => {
    if (row.id !== position) return row;
    const groups = contactGroups(pins, row.joins);
    const together = groups.find((group) => group.includes(a) && group.includes(b));
    const joins =
      together === undefined
        ? chained(contactGroups(pins, [...row.joins, [a, b]]))
        : chained(
            groups.map((group) => (group === together ? group.filter((pin) => pin !== b) : group)),
          );
    return { ...row, joins };
  });
  return setPositions(part, positions);
}

/** Each group as a chain of pairs, the first pin with the second and so on. */
const chained = (groups: readonly (readonly string[])[]): readonly Pair[] =>
  groups.flatMap((group) => group.slice(1).map((pin, i): Pair => [group[i]!, pin]));

/** A further position, in which nothing is joined until a meter says so. */
export function addPosition(part: Switch, id: string, name?: string): Operation {
  return setPositions(part, [
    ...part.positions,
    { id, ...(name === undefined ? {} : { name }), joins: [] },
  ]);
}

export function renamePosition(part: Switch, id: string, name: string): Operation {
  return setPositions(
    part,
    part.positions.map((row) => (row.id === id ? { ...row, name } : row)),
  );
}

/** A position taken away. Refused when applied while a state, an intent or the rest of the switch still names it. */
export function removePosition(part: Switch, id: string): Operation {
  return setPositions(
    part,
    part.positions.filter((row) => row.id !== id),
  );
}

function setPositions(part: Switch, value: readonly unknown[]): Operation {
  return { op: "set", list: "parts", id: part.id, path: ["positions"], value };
}
