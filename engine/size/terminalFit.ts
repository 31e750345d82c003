import {
  bulletRanges,
  type Figure,
  figureOrNull,
  ringBarrels,
  sealRanges,
  studs,
  terminals,
} from "../tables/index.ts";
import type { EndFitting, FittingProblem } from "./endFitting.ts";

/** A terminal, the range of its barrel and whether the copper goes in. */
export type TerminalFit = Pick<
  EndFitting,
  "kind" | "terminal" | "size" | "tool" | "wireFromMm2" | "wireToMm2" | "problem"
>;

const RING_TOOL = "tool and die of the ring's barrel";

/** What a barrel of stated range says to a size of copper. */
function rangeProblem(areaMm2: number, fromMm2: number, toMm2: number): FittingProblem | null {
  if (areaMm2 < fromMm2) return "below-range";
  return areaMm2 > toMm2 ? "above-range" : null;
}

/** A row of tables/terminals by its id, fitted to so much copper. A 4.7 mm bullet comes in bores of its own table. */
export function namedTerminalFit(id: string, areaMm2: number, odMm: number | null): TerminalFit {
  if (id.startsWith("ring-")) return ringFit(id.slice("ring-".length), areaMm2);
  const row = terminals.find((one) => one.id === id);
  if (row === undefined) throw new Error(`no terminal "${id}" in tables/terminals`);
  const kind = row.class as "blade" | "bullet" | "sealed";
  const bore = id === "bullet-4.7" ? boreOf(areaMm2) : null;
  const fromMm2 = bore?.wireFromMm2 ?? row.wireFromMm2;
  const toMm2 = bore?.wireToMm2 ?? row.wireToMm2;
  const seal = kind === "sealed" && odMm !== null ? sealProblem(id, odMm) : null;
  return {
    kind,
    terminal: id,
    size: bore === null ? row.size : `${row.size}, bore for ${bore.boreFor}`,
    tool: row.tool,
    wireFromMm2: fromMm2,
    wireToMm2: toMm2,
    problem: rangeProblem(areaMm2, fromMm2, toMm2) ?? seal,
  };
}

/** The first bore that takes the copper; the widest where none does. */
const boreOf = (areaMm2: number) => {
  const bores = bulletRanges.filter((row) => row.pinMm === 4.7);
  return bores.find((row) => row.wireToMm2 >= areaMm2) ?? bores.at(-1)!;
};

function sealProblem(contact: string, odMm: number): FittingProblem | null {
  const seals = sealRanges.filter((row) => row.contact === contact);
  const closes = seals.some((row) => odMm >= row.insulationFromMm && odMm <= row.insulationToMm);
  return seals.length === 0 || closes ? null : "insulation";
}

/**
 * Of terminals that differ only in their barrel, the smallest that takes the copper. In a gap between two barrels the larger one is taken and said
 * to be too large; above all of them the largest, said to be too small.
 */
export function terminalFitByArea(
  ids: readonly string[],
  areaMm2: number,
  odMm: number | null,
): TerminalFit {
  const fits = ids
    .map((id) => namedTerminalFit(id, areaMm2, odMm))
    .sort((a, b) => a.wireToMm2! - b.wireToMm2!);
  const chosen = fits.find(({ wireToMm2 }) => wireToMm2! >= areaMm2) ?? fits.at(-1)!;
  const isGap = chosen.problem === "below-range" && chosen !== fits[0];
  return isGap ? { ...chosen, problem: "between-ranges" } : chosen;
}

/** A ring for a stud, its barrel by the copper. @param stud  row of tables/studs; null: nobody said. */
export function ringFit(stud: string | null, areaMm2: number): TerminalFit {
  const barrels = [...ringBarrels].sort((a, b) => a.wireToMm2 - b.wireToMm2);
  const barrel = barrels.find((row) => row.wireToMm2 >= areaMm2) ?? barrels.at(-1)!;
  const range = rangeProblem(areaMm2, barrel.wireFromMm2, barrel.wireToMm2);
  const isGap = range === "below-range" && barrel !== barrels[0];
  const hole = stud === null ? null : holeOf(stud);
  return {
    kind: "ring",
    terminal: stud === null ? null : `ring-${stud}`,
    size: hole === null ? "hole by the stud: measure it" : `hole ${hole.value} mm for ${stud}`,
    tool: RING_TOOL,
    wireFromMm2: barrel.wireFromMm2,
    wireToMm2: barrel.wireToMm2,
    problem: stud === null ? "stud-not-stated" : isGap ? "between-ranges" : range,
  };
}

const holeOf = (stud: string): Figure | null =>
  studs.some((row) => row.id === stud) ? figureOrNull("studs", stud, "holeMm") : null;
