import type { Job } from "@copperwright/engine";
import type { Chosen } from "../store/documentState.ts";

export interface FoundThing {
  readonly kind: Chosen["kind"];
  readonly id: string;
  readonly label: string;
  readonly note: string;
}

/** Things of a job whose number, name, kind or colour holds every word typed; exact names first. */
export function foundThings(job: Job, typed: string): readonly FoundThing[] {
  const words = typed.toLowerCase().split(/\s+/).filter(Boolean);
  const all = [
    ...job.wires.map((wire): FoundThing => {
      const { main = "", tracer = "" } = wire.colour ?? {};
      const label = `wire ${wire.number ?? wire.id}`;
      return {
        kind: "wire",
        id: wire.id,
        label,
        note: `${main} ${tracer} ${wire.from} to ${wire.to}`,
      };
    }),
    ...job.parts.map(
      ({ id, name, kind }): FoundThing => ({
        kind: "part",
        id,
        label: name || id,
        note: `${id} ${kind}`,
      }),
    ),
    ...job.stations.map(
      ({ id, name }): FoundThing => ({ kind: "station", id, label: name, note: `${id} station` }),
    ),
    ...job.joints.map(
      ({ id, name = "", kind }): FoundThing => ({
        kind: "joint",
        id,
        label: name || id,
        note: `${id} ${kind}`,
      }),
    ),
    ...job.connectors.map(
      ({ id, name }): FoundThing => ({
        kind: "connector",
        id,
        label: name || id,
        note: `${id} connector`,
      }),
    ),
    ...job.circuits.map(
      ({ id, name }): FoundThing => ({ kind: "circuit", id, label: name, note: `${id} circuit` }),
    ),
  ];
  const rank = ({ id, label }: FoundThing): number => {
    const first = words[0] ?? "";
    if (id.toLowerCase() === first || label.toLowerCase() === typed.toLowerCase().trim()) return 0;
    return id.toLowerCase().startsWith(first) || label.toLowerCase().startsWith(first) ? 1 : 2;
  };
  return all
    .filter(({ id, label, note }) => {
      const text = `${id} ${label} ${note}`.toLowerCase();
      return words.every((word) => text.includes(word));
    })
    .map((thing) => ({ thing, order: rank(thing) }))
    .sort((a, b) => a.order - b.order)
    .map(({ thing }) => thing);
}
