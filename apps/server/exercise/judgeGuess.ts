import type { Job, SetFault } from "@copperwright/engine";
import type { Guess } from "./exerciseSchemas.ts";

export interface GuessJudged {
  /** One of the faults, by kind and place. */
  readonly isRight: boolean;
  /** The place, or the wire or pin beside it; what is wrong there may be something else. */
  readonly isNear: boolean;
}

const EARTH = "earth";

/** A guess against the faults that were set. A wire and the pins it ends on are beside each other. */
export function judgeGuess(job: Job, faults: readonly SetFault[], guess: Guess): GuessJudged {
  const isRight = faults.some((fault) => isSame(fault, guess));
  const guessed = placesOf(guess);
  const around = new Set(faults.flatMap((fault) => placesOf(fault)));
  for (const { id, from, to } of job.wires) {
    if (![...around].some((place) => place === id)) continue;
    around.add(from);
    around.add(to);
  }
  const beside = job.wires.filter(({ from, to }) => around.has(from) || around.has(to));
  for (const { id } of beside) around.add(id);
  return { isRight, isNear: isRight || guessed.some((place) => around.has(place)) };
}

function isSame(fault: SetFault, guess: Guess): boolean {
  if (fault.kind !== guess.kind) return false;
  const places = [...placesOf(fault)].sort();
  return [...placesOf(guess)].sort().every((place, i) => place === places[i]);
}

function placesOf(named: SetFault | Guess): readonly string[] {
  switch (named.kind) {
    case "short":
      return [named.a, named.b ?? EARTH];
    case "swapped":
      return named.wires;
    default:
      return [named.place];
  }
}
