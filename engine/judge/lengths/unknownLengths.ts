import type { Finding } from "../../messages/index.ts";
import type { LengthUnknown } from "../../route/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** Lengths nobody has measured: one finding for each run, pin or gap that is the cause, with the wires that hang on it. */
export const unknownLengths: Judge = ({ routed, job }) => {
  const present = new Set(
    job.wires.filter(({ status }) => status !== "remove").map(({ id }) => id),
  );
  const causes = new Map<string, { readonly unknown: LengthUnknown; readonly wires: string[] }>();
  for (const { wire, unknown } of routed.wires.values()) {
    if (unknown === null || !present.has(wire)) continue;
    for (const cause of causesOf(unknown)) {
      const known = causes.get(cause) ?? { unknown, wires: [] };
      known.wires.push(wire);
      causes.set(cause, known);
    }
  }
  return [...causes].map(
    ([cause, { unknown, wires }]): Finding =>
      findingOf({
        code: `length-unknown-${unknown.reason}`,
        severity: "mend",
        subject: { kind: KINDS[unknown.reason], id: cause },
        also: wires,
        numbers: { wireCount: wires.length, wires: wires.join(", ") },
      }),
  );
};

const KINDS = { "run-not-measured": "run", "no-station": "pin", "no-way": "station" } as const;

function causesOf(unknown: LengthUnknown): readonly string[] {
  switch (unknown.reason) {
    case "run-not-measured":
      return unknown.runs;
    case "no-station":
      return unknown.pins;
    case "no-way":
      return [unknown.stations.join(" to ")];
  }
}
