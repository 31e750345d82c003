import { presentParts } from "../../job/index.ts";
import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** Less than this through a contact in every state is nothing, A. */
const NOTHING_A = 0.001;

/** Positions of a switch whose contacts never carry anything: not wired, or wired to nothing. */
export const idleContacts: Judge = (design) => {
  const { worst, job } = design;
  const spark = sparkPins(design);
  return presentParts(job).flatMap((part): readonly Finding[] => {
    if (part.kind !== "switch") return [];
    const idle = (pair: readonly [string, string]): boolean => {
      const names = [`${part.id}:${pair[0]}-${pair[1]}`, `${part.id}:${pair[1]}-${pair[0]}`];
      const mostA = names.map((name) =>
        Math.max(
          worst.contacts.get(name)?.currentA ?? 0,
          worst.crankingContacts.get(name)?.currentA ?? 0,
        ),
      );
      return Math.max(...mostA) < NOTHING_A;
    };
    const isSpark = (pair: readonly [string, string]): boolean =>
      pair.some((pin) => spark.has(`${part.id}.${pin}`));
    const dead = part.positions.filter(
      ({ joins }) => joins.length > 0 && joins.every((pair) => idle(pair) && !isSpark(pair)),
    );
    if (dead.length === 0) return [];
    return [
      findingOf({
        code: "switch-position-dead",
        severity: "advise",
        subject: { kind: "part", id: part.id },
        numbers: { positions: dead.map(({ id }) => id).join(", ") },
      }),
    ];
  });
};

/** Pins of ignition, alternating and kill nets: what passes them is not solved on the battery. */
function sparkPins({ compiled, job }: Design): ReadonlySet<string> {
  const pins = new Set(compiled.nets.nets.flatMap(({ nodes }) => [...nodes]));
  for (const part of job.parts) {
    for (const { id, role } of part.pins) {
      if (role === "kill" || role === "ac") pins.add(`${part.id}.${id}`);
    }
  }
  return pins;
}
