import type { Job, Wire } from "../job.ts";
import type { Operation } from "./operation.ts";

type End = "from" | "to";

/** The thing a pin belongs to: the part, joint or body, or one half of a connector. */
function ownerOf(job: Job, pin: string): string {
  const dot = pin.indexOf(".");
  const id = pin.slice(0, dot);
  return job.connectors.some((one) => one.id === id) ? `${id}${pin.slice(-1)}` : id;
}

/** The ends at which two wires are most easily confused: on the same thing where they share one, else both far ends. */
function endsAlike(job: Job, one: Wire, other: Wire): readonly [End, End] {
  const ends = ["from", "to"] as const;
  for (const a of ends) {
    for (const b of ends) {
      const isSame = one[a] === other[b];
      if (!isSame && ownerOf(job, one[a]) === ownerOf(job, other[b])) return [a, b];
    }
  }
  return ["to", "to"];
}

/**
 * Two wires put on each other's pin, as happens where two plugs or two cavities lie side by side. Only the ends move: the wires stay the
 * pieces they are, so their lengths are left as stated.
 *
 * @returns null where one of them is not in the job or both are the same.
 */
export function swapWireEnds(job: Job, one: string, other: string): Operation | null {
  const [first, second] = [one, other].map((id) => job.wires.find((wire) => wire.id === id));
  if (first === undefined || second === undefined || first === second) return null;
  const [a, b] = endsAlike(job, first, second);
  const put = (id: string, end: End, value: string): Operation => ({
    op: "set",
    list: "wires",
    id,
    path: [end],
    value,
  });
  return {
    op: "batch",
    name: `Swap ${one} and ${other}`,
    operations: [put(one, a, second[b]), put(other, b, first[a])],
  };
}
