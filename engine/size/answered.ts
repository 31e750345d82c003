import type { MakeFields } from "../route/index.ts";
import { type FitQuestion, willDo } from "./makeFits.ts";
import { sameQuestion } from "./sameQuestion.ts";
import type { AskedSize } from "./sizedJob.ts";

/** Which makes fit a wire: of makes alike the answer before to a question alike, the very same list then. */
export function answered(
  makes: readonly MakeFields[],
  question: FitQuestion,
  before: AskedSize | undefined,
): AskedSize {
  const isKnown =
    before !== undefined &&
    before.makes.length === makes.length &&
    makes.every(({ makeId }, i) => makeId === before.makes[i]!.makeId) &&
    sameQuestion(before.question, question);
  return { makes, question, fits: isKnown ? before.fits : fittingMakes(makes, question) };
}

/** Makes that will do; where none does, the largest, so that the loom can still be solved and the shortfall shown. */
function fittingMakes(makes: readonly MakeFields[], question: FitQuestion): readonly MakeFields[] {
  const first = makes.findIndex((make) => willDo(make, question));
  return first < 0 ? makes.slice(-1) : makes.slice(first);
}
