import type { WireEnd } from "../../job/index.ts";
import { preInsulated } from "../../tables/index.ts";
import { findingOf } from "../findingOf.ts";
import type { Judge } from "../judge.ts";

/** Rows of tables/terminals that are pre-insulated, by the colour of their sleeve. */
const SLEEVED: ReadonlyMap<string, string> = new Map(
  preInsulated.map(({ id }) => [`blade-6.3-${id}`, id]),
);

/** Pre-insulated terminals that go with a plain blade of the same width. */
export const sleevedBlades: readonly string[] = [...SLEEVED.keys()];

/** Pre-insulated terminals: their sleeve hides the crimp and does not grip the insulation. */
export const preInsulatedEnds: Judge = ({ job, conductors }) => {
  const isSleeved = (end: WireEnd | undefined): boolean => SLEEVED.has(end?.terminal ?? "");
  const ends = [...job.wires]
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .filter(({ fromEnd, toEnd }) => isSleeved(fromEnd) || isSleeved(toEnd));
  const [first, ...others] = ends;
  if (first === undefined) return [];
  const terminal = (isSleeved(first.fromEnd) ? first.fromEnd : first.toEnd)!.terminal!;
  return [
    findingOf({
      code: "terminal-pre-insulated",
      severity: "advise",
      subject: { kind: "wire", id: first.id },
      also: others.map(({ id }) => id),
      numbers: {
        terminal,
        areaMm2: conductors.get(first.id)?.areaMm2 ?? null,
        instead: terminal === "blade-6.3-yellow" ? "blade-6.3-large" : "blade-6.3",
      },
      limit: null,
    }),
  ];
};
