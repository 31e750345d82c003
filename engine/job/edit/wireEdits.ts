import type { Job, Wire } from "../job.ts";
import type { EditedList, Operation } from "./operation.ts";

type Length = NonNullable<Wire["lengthMm"]>;

const onWire = (id: string, path: string, value?: unknown): Operation => ({
  op: "set",
  list: "wires",
  id,
  path: [path],
  ...(value === undefined ? {} : { value }),
});

/**
 * One end of a wire put on another pin. A length that was typed for the old way, and the stations it had to pass, do not hold for the
 * new one: they go, unless a new length is given.
 */
export function moveWireEnd(change: {
  readonly wire: string;
  readonly end: "from" | "to";
  readonly pin: string;
  readonly lengthMm?: Length;
}): Operation {
  const { wire, end, pin, lengthMm } = change;
  return {
    op: "batch",
    name: `Move the ${end} end of ${wire} to ${pin}`,
    operations: [onWire(wire, end, pin), onWire(wire, "lengthMm", lengthMm), onWire(wire, "via")],
  };
}

/** A make chosen by a person, who is answerable for it; without a make the choice goes back to the engine. */
export function resizeWire(change: {
  readonly wire: string;
  readonly make?: string;
  readonly by?: string;
}): Operation {
  const { wire, make, by } = change;
  if (make === undefined) return onWire(wire, "size");
  return onWire(wire, "size", { make, basis: "chosen", ...(by === undefined ? {} : { by }) });
}

export function setFuseRating(fuse: string, ratingA: number): Operation {
  return { op: "set", list: "parts", id: fuse, path: ["ratingA"], value: ratingA };
}

/** One thing taken away together with the places the drawings kept for it. Refused when applied while anything still names it. */
export function removeWithPlaces(layout: Job["layout"], list: EditedList, id: string): Operation {
  const places = (["side", "diagram", "board"] as const)
    .filter((sheet) => Object.hasOwn(layout[sheet] ?? {}, id))
    .map((sheet): Operation => ({ op: "set", list: "job", path: ["layout", sheet, id] }));
  const operations: readonly Operation[] = [{ op: "remove", list, id }, ...places];
  return { op: "batch", name: `Remove ${id}`, operations };
}
