import type { Job } from "../job.ts";

/** What would be left in the air if a thing were taken away: sorted ids by kind. */
export interface Hanging {
  readonly wires: readonly string[];
  readonly bonds: readonly string[];
  /** Generators whose case is fastened there. */
  readonly parts: readonly string[];
}

/** Things of a job that others hang on; a point of a body is written BODY.POINT. */
export type Holder = "joints" | "connectors" | "bodies" | "points" | "looms" | "circuits";

const sorted = (ids: readonly string[]): readonly string[] => [...ids].sort();

/** Everything that still names a joint, connector, body, point of a body, loom or circuit. */
export function hangingOn(job: Job, holder: Holder, id: string): Hanging {
  if (holder === "looms" || holder === "circuits") {
    const field = holder === "looms" ? "loom" : "circuit";
    const own = job.wires.filter((wire) => wire[field] === id);
    return { wires: sorted(own.map((wire) => wire.id)), bonds: [], parts: [] };
  }
  const isOn = (pin: string): boolean =>
    holder === "points" ? pin === id : pin.startsWith(`${id}.`);
  const onIt = ({ from, to }: { readonly from: string; readonly to: string }): boolean =>
    isOn(from) || isOn(to);
  return {
    wires: sorted(job.wires.filter(onIt).map((wire) => wire.id)),
    bonds: sorted(job.bonds.filter(onIt).map((bond) => bond.id)),
    parts: sorted(
      job.parts.flatMap((part) =>
        part.kind === "generator" && part.case !== undefined && isOn(part.case) ? [part.id] : [],
      ),
    ),
  };
}
