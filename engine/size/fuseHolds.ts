import { bundleConductorTemperaturesC, heatMaterials, loomMaterials } from "../heat/index.ts";
import type { Conductors, MakeFields } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import type { Rating, RatingQuestion } from "./ratingOf.ts";
import type { WirePlace } from "./wirePlaces.ts";

/** The heat model is not asked above this, °C: copper does not melt there, every insulation has. */
const CEILING_C = 1000;

/**
 * Whether a make may stand behind its fuses for ever.
 *
 * The sum of the fuses is at most the rating of one such wire in that air; and either at most its rating in the bundle,
 * or the heat model, with the neighbours at their largest lasting currents, keeps it within class + the endless rise at
 * 1.35 × the sum, where a fuse need not open.
 *
 * @param neighbourA  largest lasting current of a conductor, A.
 */
export function fuseHolds(question: {
  readonly make: MakeFields;
  readonly wire: string;
  readonly places: readonly WirePlace[];
  readonly sumA: number;
  readonly conductors: Conductors;
  readonly neighbourA: (conductor: string) => number;
  readonly rate: (question: RatingQuestion) => Rating;
}): boolean {
  const { make, places, sumA, rate } = question;
  return places.every((place) => {
    const { ambientC, bundle, sleeved } = place;
    const alone = { wireCount: 1, loadedCount: 1 };
    const single = rate({ makeId: make.makeId, ambientC, bundle: alone });
    if (sumA > (single.tableA ?? single.currentA)) return false;
    const derated = rate({ makeId: make.makeId, ambientC, bundle, sleeved });
    return sumA <= derated.currentA || survivesOverload(question, place);
  });
}

function survivesOverload(
  question: Parameters<typeof fuseHolds>[0],
  { stretch, ambientC }: WirePlace,
): boolean {
  const { make, wire, sumA, conductors, neighbourA } = question;
  const overload = figure("protectionRules", "endless-overload", "value").value;
  const rise = figure("heatLimits", "endless-rise", "value").value;
  const others = (stretch?.wires ?? [])
    .filter((one) => one !== wire)
    .map((one) => conductors.get(one)!);
  const packing = loomMaterials();
  const state = bundleConductorTemperaturesC({
    wires: [make, ...others].map(({ ohmPerM20Max, conductorDiameterMm, odMm }) => ({
      ohmPerM20: ohmPerM20Max,
      conductorDiameterMm,
      outerDiameterMm: odMm,
    })),
    currentsA: [overload * sumA, ...others.map(({ id }) => neighbourA(id))],
    bundleDiameterMm: null,
    packingRatio: packing.packingRatio,
    conductivityWPerMK: packing.conductivityWPerMK,
    sleeve: null,
    ambientC,
    materials: heatMaterials(make.insulation),
    ceilingC: CEILING_C,
  });
  return state.ok && state.conductorsC[0]! <= make.classC + rise;
}
