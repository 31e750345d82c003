import type { FitQuestion } from "./makeFits.ts";
import type { WirePlace } from "./wirePlaces.ts";

/** True where two questions about a wire have the same answer for every make: all that is read of them is alike. */
export function sameQuestion(one: FitQuestion, other: FitQuestion): boolean {
  return (
    one.continuousA === other.continuousA &&
    one.crankingA === other.crankingA &&
    one.fuseSumA === other.fuseSumA &&
    one.rate === other.rate &&
    one.places.length === other.places.length &&
    one.places.every((place, i) => samePlace(place, other.places[i]!)) &&
    sameNeighbours(one, other)
  );
}

const samePlace = (one: WirePlace, other: WirePlace): boolean =>
  one.at === other.at &&
  one.ambientC === other.ambientC &&
  one.sleeved === other.sleeved &&
  one.bundle.wireCount === other.bundle.wireCount &&
  one.bundle.loadedCount === other.bundle.loadedCount &&
  one.stretch === other.stretch;

/** Of its neighbours their copper, their girth and what they carry are read; they lie in the same stretches. */
const sameNeighbours = (one: FitQuestion, other: FitQuestion): boolean =>
  one.places.every(({ stretch }) =>
    (stretch?.wires ?? []).every((id) => {
      if (one.neighbourA(id) !== other.neighbourA(id)) return false;
      const [was, is] = [one.conductors.get(id), other.conductors.get(id)];
      return (
        was === is ||
        (was?.ohmPerM20Max === is?.ohmPerM20Max &&
          was?.conductorDiameterMm === is?.conductorDiameterMm &&
          was?.odMm === is?.odMm)
      );
    }),
  );
