import type { Wire } from "../../job/index.ts";
import { placesOfPins } from "../../route/index.ts";
import type { PaperInput } from "../paperInput.ts";
import { compareNumbers, numberOf } from "../wireRows.ts";

/** One end of a wire where it comes out of a loom. */
export interface WireEnd {
  readonly wire: Wire;
  readonly pin: string;
  /** Both ends at one place: a short link outside the bundle. */
  readonly otherPin: string | null;
}

/** Wire ends of one loom by the vertex of its board they come out at, and by the joint they end on along a run. */
export function wireEndsOf(
  { job }: PaperInput,
  loom: string,
): {
  readonly at: ReadonlyMap<string, readonly WireEnd[]>;
  readonly on: ReadonlyMap<string, readonly Wire[]>;
} {
  const places = placesOfPins(job);
  const at = new Map<string, WireEnd[]>();
  const on = new Map<string, Wire[]>();
  const ownerOf = (pin: string): string => pin.slice(0, pin.indexOf("."));
  const vertexOf = (pin: string): string | null => {
    const place = places.get(pin);
    if (place?.kind === "run") return null;
    if (place?.kind === "station") return place.station;
    return job.bodies.some(({ id }) => id === ownerOf(pin)) ? pin : ownerOf(pin);
  };
  const wires = job.wires
    .filter((wire) => wire.loom === loom && wire.status !== "remove")
    .sort((p, q) => compareNumbers(numberOf(p), numberOf(q)));
  for (const wire of wires) {
    const [from, to] = [vertexOf(wire.from), vertexOf(wire.to)];
    if (from !== null && from === to) {
      at.set(from, [...(at.get(from) ?? []), { wire, pin: wire.from, otherPin: wire.to }]);
      continue;
    }
    for (const [vertex, pin] of [
      [from, wire.from],
      [to, wire.to],
    ] as const) {
      if (vertex === null) on.set(ownerOf(pin), [...(on.get(ownerOf(pin)) ?? []), wire]);
      else at.set(vertex, [...(at.get(vertex) ?? []), { wire, pin, otherPin: null }]);
    }
  }
  return { at, on };
}
