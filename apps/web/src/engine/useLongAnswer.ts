import { useEffect, useState } from "react";
import { useJobText } from "../store/useJobText.ts";
import type { Answer, AnswerName, Question } from "./answers.ts";
import { askLong } from "./engineClient.ts";
import type { Asked } from "./useAnswer.ts";

/** Like `useAnswer`, for what takes longer than a hand waits: asked of the back worker once the hand has rested. */
export function useLongAnswer<N extends AnswerName>(
  name: N,
  question: Question<N>,
): Asked<Answer<N>> {
  const text = useJobText();
  const words = JSON.stringify(question ?? null);
  const [state, setState] = useState<Asked<Answer<N>>>({
    answer: null,
    isStale: true,
    fault: null,
  });
  useEffect(() => {
    if (text === null) return;
    let isCurrent = true;
    setState((old) => ({ ...old, isStale: true }));
    askLong(text, name, JSON.parse(words) as Question<N>).then(
      (answer) => isCurrent && setState({ answer, isStale: false, fault: null }),
      (error: unknown) =>
        isCurrent &&
        setState((old) => ({
          ...old,
          isStale: false,
          fault: error instanceof Error ? error.message : String(error),
        })),
    );
    return () => {
      isCurrent = false;
    };
  }, [name, words, text]);
  return state;
}
