import type { Job } from "../job/index.ts";
import { type Figure, figure } from "../tables/index.ts";

/** A length somebody should look at again, with what was perhaps meant. Nothing is changed by itself. */
export interface DoubtfulLength {
  readonly subject: { readonly kind: "run" | "wire"; readonly id: string };
  readonly lengthMm: number;
  readonly reason: "shorter-than-a-connector" | "longer-than-a-machine" | "unlike-the-others";
  /** The same figures in another unit, where that would be a usual length, mm. */
  readonly guesses: readonly { readonly unit: "m" | "cm" | "mm"; readonly lengthMm: number }[];
  readonly limit: Figure;
}

/**
 * Lengths that look like a slip of the unit: 1.6 (metres?), 16 (centimetres?), 16000 (micrometres?), or a run that many times
 * longer or shorter than the middle one of the job.
 */
export function doubtfulLengths(job: Job): readonly DoubtfulLength[] {
  const runs = job.runs.flatMap(({ id, lengthMm }) =>
    lengthMm === undefined ? [] : [{ kind: "run" as const, id, lengthMm: lengthMm.value }],
  );
  const wires = job.wires.flatMap(({ id, lengthMm, status }) =>
    lengthMm === undefined || status === "remove"
      ? []
      : [{ kind: "wire" as const, id, lengthMm: lengthMm.value }],
  );
  const middleMm = middleOf(runs.map(({ lengthMm }) => lengthMm));
  return [...runs, ...wires].flatMap(({ kind, id, lengthMm }) => {
    const found = doubtOf(lengthMm, kind === "run" ? middleMm : null);
    return found === null
      ? []
      : [{ subject: { kind, id }, lengthMm, guesses: guessesOf(lengthMm), ...found }];
  });
}

const rule = (id: "length-least" | "length-most" | "length-unlike"): Figure =>
  figure("routeRules", id, "value");

function doubtOf(
  lengthMm: number,
  middleMm: number | null,
): Pick<DoubtfulLength, "reason" | "limit"> | null {
  const [least, most, unlike] = [rule("length-least"), rule("length-most"), rule("length-unlike")];
  if (lengthMm < least.value) return { reason: "shorter-than-a-connector", limit: least };
  if (lengthMm > most.value) return { reason: "longer-than-a-machine", limit: most };
  if (middleMm === null) return null;
  const ratio = Math.max(lengthMm / middleMm, middleMm / lengthMm);
  return ratio > unlike.value ? { reason: "unlike-the-others", limit: unlike } : null;
}

/** Null for too few runs to say what is usual. */
function middleOf(lengthsMm: readonly number[]): number | null {
  if (lengthsMm.length < 3) return null;
  const sorted = [...lengthsMm].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? null;
}

function guessesOf(lengthMm: number): DoubtfulLength["guesses"] {
  const units = [
    { unit: "m", lengthMm: lengthMm * 1000 },
    { unit: "cm", lengthMm: lengthMm * 10 },
    { unit: "mm", lengthMm },
  ] as const;
  const [least, most] = [rule("length-least").value, rule("length-most").value];
  return units.filter((guess) => guess.lengthMm >= least && guess.lengthMm <= most);
}
