import { useJobText } from "../store/useJobText.ts";
import type { Answer, AnswerName, Question } from "./answers.ts";
import { askLong } from "./engineClient.ts";
import { type Asked, useAsked } from "./useAsked.ts";

/**
 * Like `useAnswer`, for what takes longer than a hand waits: asked of a back worker once the hand has rested.
 *
 * @param question     null: nothing is asked
 * @param workerIndex  which back worker
 */
export function useLongAnswer<N extends AnswerName>(
  name: N,
  question: Question<N> | null,
  workerIndex = 0,
): Asked<Answer<N>> {
  const text = useJobText();
  const mark = `${name} ${JSON.stringify(question ?? null)} ${text}`;
  const work =
    text === null || question === null
      ? null
      : () => askLong(text, name, question, undefined, workerIndex);
  return useAsked(mark, work);
}
