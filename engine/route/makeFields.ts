import { figure, figureOrNull, wires as makes } from "../tables/index.ts";
import { strandAreaMm2 } from "../units/index.ts";
import type { Conductor } from "./conductor.ts";

/** What a conductor has from its make alone. */
export type MakeFields = Omit<
  Conductor,
  "id" | "kind" | "from" | "to" | "circuit" | "lengthMm" | "sizedBy" | "ambientC"
>;

const MM2_PER_M2 = 1e6;

/**
 * Figures of one make. Where no table gives its resistance the largest is the counted copper's times a stated ratio.
 *
 *   R20,min = ρ20 / A      A = N · π/4 · d²
 *
 * @throws  Error where tables/wires has no such row: reading the job refuses that.
 */
export function makeFields(makeId: string): MakeFields {
  const row = makes.find((one) => one.id === makeId);
  if (row === undefined) throw new Error(`no make of wire "${makeId}" in tables/wires`);
  const areaMm2 = strandAreaMm2(row);
  const resistivityOhmM = figure("copper", "resistivity-20", "value").value;
  const ohmPerM20Min = (resistivityOhmM / areaMm2) * MM2_PER_M2;
  const unpublished = figure("copper", "typical-over-pure", "value").value;
  return {
    makeId,
    areaMm2,
    strandCount: row.strandCount,
    strandDiameterMm: row.strandDiameterMm,
    conductorDiameterMm: row.conductorDiameterMm,
    odMm: row.odMaxMm ?? row.odNominalMm ?? thickWallBoundMm(areaMm2),
    wall: row.wall,
    insulation: row.insulation,
    classC: row.tempClassC,
    ohmPerM20Max:
      row.maxOhmPerKm20 === null ? ohmPerM20Min * unpublished : row.maxOhmPerKm20 / 1000,
    ohmPerM20Min,
    rated: figureOrNull("wires", makeId, "ratedA"),
  };
}

/** Upper bound where nobody published a diameter: thick-wall cable of the same or the next larger copper. */
function thickWallBoundMm(areaMm2: number): number {
  const bounds = makes
    .filter((row) => row.wall === "thick" && strandAreaMm2(row) >= areaMm2)
    .map((row) => row.odMaxMm ?? Number.POSITIVE_INFINITY);
  const leastMm = Math.min(...bounds);
  if (!Number.isFinite(leastMm)) throw new Error(`no cable of ${areaMm2} mm2 bounds a diameter`);
  return leastMm;
}
