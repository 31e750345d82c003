import type { Job, Part, Status, Wire } from "./job.ts";
import { loadsOf } from "./loadsOf.ts";
import { pinsOf } from "./pinsOf.ts";

type HasStatus = { readonly status?: Status | undefined };

/** Wires that will be on the machine: all but those marked `remove`. */
export function presentWires(job: Job): readonly Wire[] {
  return job.wires.filter((wire) => wire.status !== "remove");
}

/** Parts that will be on the machine. */
export function presentParts(job: Job): readonly Part[] {
  return job.parts.filter((part) => part.status !== "remove");
}

/** What will be on the machine: everything but what is marked `remove`, with nothing left that names what went. */
export function asPlanned(job: Job): Job {
  return withOnly(job, (status) => status !== "remove");
}

/** The machine before any work: nothing `new`, and what is to be removed still there (its status reads `found`). */
export function asFound(job: Job): Job {
  const before = withOnly(job, (status) => status !== "new");
  const found = <T extends HasStatus>(items: readonly T[]): readonly T[] =>
    items.map((item) => (item.status === "remove" ? { ...item, status: "found" } : item));
  return {
    ...before,
    parts: found(before.parts),
    joints: found(before.joints),
    connectors: found(before.connectors),
    wires: found(before.wires),
  };
}

/** The job with only the things whose status passes; what pointed at the others goes with them, so the job still reads. */
function withOnly(job: Job, passes: (status: Status | undefined) => boolean): Job {
  const stays = (item: HasStatus): boolean => passes(item.status);
  const kept: Job = {
    ...job,
    parts: job.parts.filter(stays),
    joints: job.joints.filter(stays),
    connectors: job.connectors.filter(stays),
  };
  const pins = pinsOf(kept);
  const loads = new Set(loadsOf(kept).map((load) => load.ref));
  const parts = new Set(kept.parts.map((part) => part.id));
  const ends = ({ from, to }: { readonly from: string; readonly to: string }): boolean =>
    pins.has(from) && pins.has(to);
  const hasParts = (positions: Readonly<Record<string, unknown>>): boolean =>
    Object.keys(positions).every((part) => parts.has(part));
  const known = <T>(positions: Readonly<Record<string, T>>): Record<string, T> =>
    Object.fromEntries(Object.entries(positions).filter(([part]) => parts.has(part)));
  const states = job.states.map((state) => ({
    ...state,
    positions: known(state.positions),
    ...(state.on && { on: state.on.filter((load) => loads.has(load)) }),
    ...(state.off && { off: state.off.filter((load) => loads.has(load)) }),
  }));
  const intents = job.intents
    .filter((intent) => loads.has(intent.load))
    .map((intent) => ({
      ...intent,
      when: intent.when.map((way) => ({ ...way, positions: known(way.positions) })),
    }));
  const wires = job.wires.filter(stays).filter(ends);
  return {
    ...kept,
    parts: kept.parts.map((part) => withoutLostGenerator(part, parts)),
    wires,
    layout: layoutOf({ ...kept, wires }),
    bonds: job.bonds.filter(ends),
    states,
    intents,
    exclusions: job.exclusions.filter((exclusion) => hasParts(exclusion.positions)),
  };
}

function withoutLostGenerator(part: Part, parts: ReadonlySet<string>): Part {
  if (part.kind !== "regulator" || part.generator === undefined) return part;
  if (parts.has(part.generator)) return part;
  const { generator: _, ...rest } = part;
  return rest;
}

/** The drawing places of what is there. */
function layoutOf(job: Job): Job["layout"] {
  const lists = [job.stations, job.runs, job.bodies, job.parts, job.joints, job.connectors];
  const ids = new Set([...lists, job.wires].flatMap((list) => list.map((item) => item.id)));
  const sheets = Object.entries(job.layout).map(([sheet, places]) => [
    sheet,
    Object.fromEntries(Object.entries(places ?? {}).filter(([id]) => ids.has(id))),
  ]);
  return Object.fromEntries(sheets) as Job["layout"];
}
