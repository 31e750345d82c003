import { strandAreaMm2, type WallWord } from "../units/index.ts";
import { type WiresRow, wires } from "./allTables.generated.ts";
import { figure } from "./figure.ts";

const rule = (id: string): number => figure("wireReading", id, "value").value;

/** Makes of exactly this stranding. */
export function makesOfStranding(
  strandCount: number,
  strandDiameterMm: number,
): readonly WiresRow[] {
  const within = rule("strand-match");
  return wires.filter(
    (row) =>
      row.strandCount === strandCount &&
      Math.abs(row.strandDiameterMm - strandDiameterMm) <= within,
  );
}

/** Makes sold as this area, or whose counted copper is this area. */
export function makesOfArea(areaMm2: number): readonly WiresRow[] {
  const within = rule("area-match") * areaMm2;
  return wires.filter(
    (row) => row.nominalMm2 === areaMm2 || Math.abs(strandAreaMm2(row) - areaMm2) <= within,
  );
}

/** Stocked makes whose counted copper lies in the range. */
export const makesInAreaRange = (fromMm2: number, toMm2: number): readonly WiresRow[] =>
  wires.filter(
    (row) => row.isStockedNow && strandAreaMm2(row) >= fromMm2 && strandAreaMm2(row) <= toMm2,
  );

/** Makes that measure this much over the insulation. */
export function makesOfOutside(diameterMm: number): readonly WiresRow[] {
  const below = rule("od-below");
  const above = rule("od-above");
  return wires.filter((row) => {
    const mostMm = row.odMaxMm ?? row.odNominalMm;
    const leastMm = row.odNominalMm ?? row.odMaxMm;
    if (mostMm === null || leastMm === null) return false;
    return diameterMm >= leastMm - below && diameterMm <= mostMm + above;
  });
}

/** Row ids that each family of letters stands for. */
const idPrefixes: Readonly<Record<string, readonly string[]>> = {
  jaso: ["av-", "avs-", "avss-"],
  flry: ["thin-", "thina-"],
  "flry-a": ["thina-"],
  "flry-b": ["thin-"],
  fly: ["isothick-"],
  flr2x: ["thinx-"],
};

/** Makes of a family, all of them or those of one size. */
export function makesOfFamily(family: string, size: string | null): readonly WiresRow[] {
  const prefixes = idPrefixes[family] ?? [`${family}-`];
  return wires.filter((row) => {
    const prefix = prefixes.find((one) => row.id.startsWith(one));
    if (prefix === undefined) return false;
    return size === null || isSameSize(row.id.slice(prefix.length).split("-")[0]!, size);
  });
}

const isSameSize = (a: string, b: string): boolean =>
  a === b || (!Number.isNaN(Number(a)) && Number(a) === Number(b));

/** Only those with the wall named; all of them where no wall was named or none has it. */
export function withWall(rows: readonly WiresRow[], wall: WallWord | null): readonly WiresRow[] {
  const kept = rows.filter((row) => wall === null || row.wall === wall);
  return kept.length === 0 ? rows : kept;
}

/** Least and most counted copper of the rows, mm²; null for no rows. */
export function copperRangeMm2(rows: readonly WiresRow[]): readonly [number, number] | null {
  if (rows.length === 0) return null;
  const areas = rows.map((row) => strandAreaMm2(row));
  return [Math.min(...areas), Math.max(...areas)];
}
