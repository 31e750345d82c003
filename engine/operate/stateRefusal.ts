import { nearestWord, type Refusal, refusal, type StateRefusalCode } from "../messages/index.ts";

/** A refusal of an argument, with the likeliest intended name where there is one. */
export function stateRefusal(
  code: StateRefusalCode,
  place: { readonly pointer: string; readonly found: string },
  candidates: readonly string[],
  otherwise = "Name one that is in the job.",
): Refusal {
  const nearest = nearestWord(place.found, candidates);
  const few = candidates.length > 0 && candidates.length <= 12;
  const list = few ? `Known here: ${candidates.join(", ")}.` : otherwise;
  const remedy = nearest === null ? list : `Did you mean ${nearest}?`;
  return refusal(code, { ...place, line: null }, { remedy });
}
