import { useEffect, useState } from "react";
import { useBench } from "../store/benchStore.ts";
import type { Answer, AnswerName, Question } from "./answers.ts";
import { ask } from "./engineClient.ts";

export interface Asked<T> {
  /** The last answer; stays while a newer one is worked out. */
  readonly answer: T | null;
  readonly isStale: boolean;
  /** What went wrong, in words; the last answer still stands. */
  readonly fault: string | null;
}

/** Asks the front worker again after every edit and whenever the question changes. The last true picture stays until the next is there. */
export function useAnswer<N extends AnswerName>(name: N, question: Question<N>): Asked<Answer<N>> {
  const edit = useBench((bench) => bench.editCount);
  const key = useBench((bench) => bench.document?.key ?? "");
  const words = JSON.stringify(question ?? null);
  const [state, setState] = useState<Asked<Answer<N>> & { readonly key: string }>({
    answer: null,
    isStale: true,
    fault: null,
    key,
  });
  useEffect(() => {
    let isCurrent = true;
    setState((old) => ({ ...old, answer: old.key === key ? old.answer : null, isStale: true }));
    ask(name, question).then(
      (answer) => isCurrent && setState({ answer, isStale: false, fault: null, key }),
      (error: unknown) => isCurrent && setState((old) => ({ ...old, fault: faultText(error) })),
    );
    return () => {
      isCurrent = false;
    };
  }, [name, words, edit, key]);
  return state;
}

const faultText = (error: unknown): string =>
  error instanceof Error ? error.message : String(error);
