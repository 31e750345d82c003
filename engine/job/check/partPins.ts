import type { JsonPath } from "../read/jsonPointer.ts";
import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { ownPinsNamed } from "./ownPinsNamed.ts";
import { type Problem, problem } from "./problem.ts";

/** Contact tables, filaments, windings and the like that name a pin their part lacks, or lie between a pin and itself; fuses without two pins. */
export function partPins(index: JobIndex): readonly Problem[] {
  return index.job.parts.flatMap((part, i) => {
    const pins = new Set(part.pins.map((pin) => pin.id));
    const at = ["parts", i];
    const named = ownPinsNamed(part).flatMap((place) => {
      const path = [...at, ...place.path];
      const unknown = place.pins
        .filter(({ id }) => !pins.has(id))
        .map(({ step, id }) => unknownOwnPin(index, [...path, ...step], part.id, id, pins));
      const [first, second] = place.pins;
      const isOnOne = place.isPair && first !== undefined && first.id === second?.id;
      return isOnOne ? [...unknown, onOnePin(index, path, first.id)] : unknown;
    });
    if (part.kind !== "fuse" || part.pins.length === 2) return named;
    const pinCount = part.pins.length;
    const words = () => ({ place: index.place(at), pinCount });
    return [...named, problem("fuse-pins", [...at, "pins"], `${pinCount} pins`, words)];
  });
}

function unknownOwnPin(
  index: JobIndex,
  path: JsonPath,
  owner: string,
  id: string,
  pins: ReadonlySet<string>,
): Problem {
  return problem("unknown-own-pin", path, id, () => ({
    place: index.place(path),
    id,
    owner,
    suggestion: suggestionFor(id, pins, `a pin of ${owner}`),
  }));
}

function onOnePin(index: JobIndex, path: JsonPath, id: string): Problem {
  return problem("pair-on-one-pin", path, id, () => ({ place: index.place(path), id }));
}
