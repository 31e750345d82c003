import type { PartOf } from "../job.ts";
import type { JsonPath } from "../read/jsonPointer.ts";
import { type JobIndex, suggestionFor } from "./jobIndex.ts";
import { type Problem, problem } from "./problem.ts";

/** Positions named that a switch does not have: where it rests, what it follows, and in states, intents and exclusions. */
export function switchPositions(index: JobIndex): readonly Problem[] {
  const { job } = index;
  return [
    ...job.parts.flatMap((part, i) => (part.kind === "switch" ? ofSwitch(index, part, i) : [])),
    ...job.states.flatMap((state, i) => ofMap(index, ["states", i, "positions"], state.positions)),
    ...job.exclusions.flatMap((exclusion, i) =>
      ofMap(index, ["exclusions", i, "positions"], exclusion.positions),
    ),
    ...job.intents.flatMap((intent, i) =>
      intent.when.flatMap((way, k) =>
        ofMap(index, ["intents", i, "when", k, "positions"], way.positions),
      ),
    ),
  ];
}

function ofSwitch(index: JobIndex, part: PartOf<"switch">, i: number): readonly Problem[] {
  const path = ["parts", i];
  const follows = Object.entries(part.follows ?? {});
  return [
    ...ofOne(index, [...path, "rest"], part.id, part.rest),
    ...follows.flatMap(([mode, id]) => ofOne(index, [...path, "follows", mode], part.id, id)),
  ];
}

type Positions = Readonly<Record<string, string | readonly string[]>>;

function ofMap(index: JobIndex, path: JsonPath, positions: Positions): readonly Problem[] {
  return Object.entries(positions).flatMap(([id, at]) => {
    const here = [...path, id];
    if (!index.positions.has(id)) {
      const suggestion = () => suggestionFor(id, index.positions.keys(), "a switch");
      const words = () => ({ place: index.place(path), id, suggestion: suggestion() });
      return [problem("unknown-switch", here, id, words)];
    }
    if (typeof at === "string") return ofOne(index, here, id, at);
    return at.flatMap((position, k) => ofOne(index, [...here, k], id, position));
  });
}

function ofOne(index: JobIndex, path: JsonPath, owner: string, id: string): readonly Problem[] {
  const known = index.positions.get(owner)!;
  if (known.has(id)) return [];
  const words = () => ({
    place: index.place(path),
    id,
    owner,
    suggestion: suggestionFor(id, known, `a position of ${owner}`),
  });
  return [problem("unknown-own-position", path, id, words)];
}
