import { useBench } from "../store/benchStore.ts";
import type { Answer, AnswerName, Question } from "./answers.ts";
import { ask } from "./engineClient.ts";
import { type Asked, useAsked } from "./useAsked.ts";

/** Asks the front worker again after every edit and whenever the question changes. */
export function useAnswer<N extends AnswerName>(name: N, question: Question<N>): Asked<Answer<N>> {
  const edit = useBench((bench) => bench.editCount);
  return useAsked(`${edit} ${name} ${JSON.stringify(question ?? null)}`, () => ask(name, question));
}
