import { adiabaticEndC, heatCapacityJPerMK, heatMaterials } from "../heat/index.ts";
import type { Conductors, MakeFields } from "../route/index.ts";
import { figure } from "../tables/index.ts";
import { fuseHolds } from "./fuseHolds.ts";
import type { Rating, RatingQuestion } from "./ratingOf.ts";
import type { WirePlace } from "./wirePlaces.ts";

/** What a make falls short of on a wire. */
export type Shortfall = "mechanical" | "rating" | "fuse";

export interface FitQuestion {
  readonly wire: string;
  readonly places: readonly WirePlace[];
  readonly continuousA: number;
  readonly crankingA: number;
  /** Sum of the fuses that guard the wire; null where nobody said. */
  readonly fuseSumA: number | null;
  readonly conductors: Conductors;
  readonly neighbourA: (conductor: string) => number;
  /** `ratingOf`, with the answers kept. */
  readonly rate: (question: RatingQuestion) => Rating;
}

/** Everything a make falls short of on a wire, apart from volt drop; empty where it will do. */
export function shortfallsOf(make: MakeFields, question: FitQuestion): readonly Shortfall[] {
  const short: Shortfall[] = [];
  if (!isStrong(make)) short.push("mechanical");
  if (!carries(make, question)) short.push("rating");
  if (!suitsFuses(make, question)) short.push("fuse");
  return short;
}

/** True where a make falls short of nothing: asks no further than the first thing it does fall short of. */
export const willDo = (make: MakeFields, question: FitQuestion): boolean =>
  isStrong(make) && carries(make, question) && suitsFuses(make, question);

const isStrong = ({ areaMm2 }: MakeFields): boolean => areaMm2 >= mechanicalLeastMm2();

const carries = (make: MakeFields, question: FitQuestion): boolean =>
  question.places.every(
    ({ ambientC, bundle, sleeved }) =>
      question.rate({ makeId: make.makeId, ambientC, bundle, sleeved }).currentA >=
      question.continuousA,
  ) && standsCranking(make, question);

function suitsFuses(make: MakeFields, question: FitQuestion): boolean {
  const { fuseSumA } = question;
  return fuseSumA === null || fuseHolds({ ...question, make, sumA: fuseSumA });
}

/** Counted copper that still counts as the trade's smallest size for a loom, mm². */
export const mechanicalLeastMm2 = (): number =>
  figure("sizeRules", "mechanical-least", "value").value *
  figure("sizeRules", "mechanical-trade", "value").value;

/** A push of the starter warms the copper by itself alone and must end within the class of the insulation. */
function standsCranking(make: MakeFields, { places, crankingA }: FitQuestion): boolean {
  if (crankingA === 0) return true;
  const timeS = figure("sizeRules", "cranking-time", "value").value;
  const materials = heatMaterials(make.insulation);
  const startC = Math.max(...places.map(({ ambientC }) => ambientC));
  const endC = adiabaticEndC({
    ohmPerM20: make.ohmPerM20Max,
    alphaPerK: materials.conductor.alphaPerK,
    startC,
    i2tA2s: crankingA ** 2 * timeS,
    capacityJPerMK: heatCapacityJPerMK(
      { ...make, outerDiameterMm: make.odMm, insulationShareRatio: 0 },
      materials,
    ),
  });
  return endC <= make.classC;
}
