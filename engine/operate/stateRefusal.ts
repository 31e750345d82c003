import { nearestWord, type Refusal } from "../messages/index.ts";

/** Refusals of a request, by permanent code: what happened. What to do is said by the place that refuses. */
export const stateRefusals = {
  "state-unknown-switch": "There is no switch of that name.",
  "state-unknown-position": "The switch has no position of that name.",
  "state-unknown-relay": "There is no relay of that name to hold.",
  "state-unknown-place": "There is no wire, pin, bond or fuse of that name.",
  "state-unknown-pin": "There is no pin of that name.",
  "state-hub-cannot-open": "The mass of a body cannot be taken apart.",
  "state-nothing-to-open": "Nothing ends there that could be opened.",
  "state-number": "That number cannot be worked with.",
  "state-no-body": "Earth stands for the main body, and this job has no body.",
  "state-short-on-itself": "Both ends of the short are the same pin.",
} as const;

export type StateRefusalCode = keyof typeof stateRefusals;

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
  return {
    code,
    pointer: place.pointer,
    line: null,
    found: place.found,
    message: `${place.found}: ${stateRefusals[code]}`,
    remedy: nearest === null ? list : `Did you mean ${nearest}?`,
  };
}
