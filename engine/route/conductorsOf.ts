import { type FlyLead, type Job, pinRef, type Wire } from "../job/index.ts";
import type { Conductor, Conductors } from "./conductor.ts";
import { type MakeFields, makeFields } from "./makeFields.ts";
import type { Routed } from "./routed.ts";

/** Stands for a wire nobody has sized, until sizing has run. */
export const UNSIZED_MAKE = "thin-1.0";

/**
 * Every stretch of copper that will be on the machine: wires and fly leads, each with its make's figures.
 *
 * @param sizes  make of each wire the engine sizes; a size fixed by a person stands before it. A wire with neither is
 *               taken as `UNSIZED_MAKE`, the trade's usual wire.
 * @throws  Error where a make is not in tables/wires: reading the job refuses that.
 */
export function conductorsOf(
  job: Job,
  routed: Routed,
  sizes: ReadonlyMap<string, string> = new Map(),
): Conductors {
  const makeOf = makeReader();
  const conductors: Conductor[] = [];
  for (const wire of job.wires) {
    if (wire.status === "remove") continue;
    const makeId = wire.size?.make ?? sizes.get(wire.id) ?? UNSIZED_MAKE;
    conductors.push({ ...makeOf(makeId), ...wireFields(wire, routed) });
  }
  for (const part of job.parts) {
    if (part.status === "remove") continue;
    for (const { id, flyLead } of part.pins) {
      if (flyLead === undefined) continue;
      const ref = pinRef(part.id, id);
      conductors.push({ ...makeOf(flyLead.make), ...flyLeadFields(ref, flyLead, routed) });
    }
  }
  conductors.sort((a, b) => (a.id < b.id ? -1 : 1));
  return new Map(conductors.map((conductor) => [conductor.id, conductor]));
}

type OwnFields = Omit<Conductor, keyof MakeFields>;

function wireFields(wire: Wire, routed: Routed): OwnFields {
  return {
    id: wire.id,
    kind: "wire",
    from: wire.from,
    to: wire.to,
    circuit: wire.circuit,
    lengthMm: routed.wires.get(wire.id)?.lengthMm ?? null,
    sizedBy: wire.size === undefined ? "engine" : "person",
    ambientC: ambientOf(wire.id, routed),
  };
}

function flyLeadFields(ref: string, flyLead: FlyLead, routed: Routed): OwnFields {
  return {
    id: ref,
    kind: "flyLead",
    from: ref,
    to: `${ref}~`,
    circuit: null,
    lengthMm: flyLead.lengthMm.value,
    sizedBy: "person",
    ambientC: ambientOf(ref, routed),
  };
}

function ambientOf(id: string, routed: Routed): number {
  const found = routed.ambients.get(id);
  if (found === undefined) throw new Error(`conductor ${id} was not routed`);
  return found.ambientC;
}

function makeReader(): (makeId: string) => MakeFields {
  const known = new Map<string, MakeFields>();
  return (makeId) => {
    const fields = known.get(makeId) ?? makeFields(makeId);
    known.set(makeId, fields);
    return fields;
  };
}
