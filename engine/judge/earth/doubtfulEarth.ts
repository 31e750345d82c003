import type { Finding } from "../../messages/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Design, Judge } from "../judge.ts";

/** What a bond must not be to count as an earth: it opens, or turns with the steering. */
const DOUBTFUL = new Set(["bearing", "paint", "rubber"]);

/** Loads whose return goes through a bearing, a painted face or rubber. One finding a bond. */
export const doubtfulEarth: Judge = ({ job, worst, compiled }: Design) => {
  const { elements } = compiled.jobNetwork;
  const bonds = new Map(job.bonds.map((bond) => [bond.id, bond]));
  const loads = new Map<string, string[]>();
  for (const { load, drop } of worst.loads.values()) {
    for (const k of drop?.back ?? []) {
      const { kind, of } = elements[k]!;
      if (kind !== "bond" || !DOUBTFUL.has(bonds.get(of)?.kind ?? "")) continue;
      loads.set(of, [...(loads.get(of) ?? []), load.ref]);
    }
  }
  return [...loads].map(
    ([id, refs]): Finding =>
      findingOf({
        code: "earth-through-doubtful-bond",
        severity: "mend",
        subject: { kind: "bond", id },
        also: refs,
        numbers: {
          kind: bonds.get(id)!.kind,
          from: bonds.get(id)!.from,
          to: bonds.get(id)!.to,
          loads: refs.join(", "),
          loadCount: refs.length,
        },
      }),
  );
};
