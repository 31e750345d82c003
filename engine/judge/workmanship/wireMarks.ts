import type { Wire } from "../../job/index.ts";
import { figure } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** What is printed on a wire. */
const markOf = ({ id, number }: Wire): string => number ?? id;

/** One number on two wires. */
export const wireNumberTwice: Judge = ({ job }) => {
  const byMark = new Map<string, string[]>();
  for (const wire of job.wires) {
    byMark.set(markOf(wire), [...(byMark.get(markOf(wire)) ?? []), wire.id]);
  }
  return [...byMark]
    .filter(([, ids]) => ids.length > 1)
    .sort(([a], [b]) => (a < b ? -1 : 1))
    .map(([number, ids]) => {
      const [first, ...others] = ids.sort();
      return findingOf({
        code: "wire-number-twice",
        severity: "mend",
        subject: { kind: "wire", id: first! },
        also: others,
        numbers: { number, wireCount: ids.length },
        limit: null,
      });
    });
};

/** Marks too long to be read on the wire. */
export const wireNumberLong: Judge = ({ job }) => {
  const limit = figure("workmanshipRules", "number-letters", "value");
  const long = job.wires
    .filter((wire) => markOf(wire).length > limit.value)
    .sort((a, b) => markOf(b).length - markOf(a).length || (a.id < b.id ? -1 : 1));
  const [first, ...others] = long;
  if (first === undefined) return [];
  return [
    findingOf({
      code: "wire-number-long",
      severity: "advise",
      subject: { kind: "wire", id: first.id },
      also: others.map(({ id }) => id),
      numbers: { number: markOf(first), letterCount: markOf(first).length },
      limit,
    }),
  ];
};
