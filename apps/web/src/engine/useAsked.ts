import { useEffect, useRef, useState } from "react";
import { useBench } from "../store/benchStore.ts";
import { faultText } from "./faultText.ts";

export interface Asked<T> {
  /** The last answer; stays while a newer one is worked out. */
  readonly answer: T | null;
  readonly isStale: boolean;
  /** What went wrong, in words; the last answer still stands. */
  readonly fault: string | null;
}

/**
 * Asks whenever `mark` changes and keeps the last true answer until the next is there; an answer that comes too late is dropped, and another job's
 * answer is never shown.
 *
 * @param work  null: nothing can be asked yet
 */
export function useAsked<T>(mark: string, work: (() => Promise<T>) | null): Asked<T> {
  const key = useBench((bench) => bench.document?.key ?? "");
  const [state, setState] = useState<Asked<T> & { readonly key: string }>({
    answer: null,
    isStale: true,
    fault: null,
    key,
  });
  const asking = useRef(work);
  asking.current = work;
  const mayAsk = work !== null;
  useEffect(() => {
    if (asking.current === null) return;
    let isCurrent = true;
    setState((old) => ({ ...old, answer: old.key === key ? old.answer : null, isStale: true }));
    asking.current().then(
      (answer) => isCurrent && setState({ answer, isStale: false, fault: null, key }),
      (error: unknown) =>
        isCurrent && setState((old) => ({ ...old, isStale: false, fault: faultText(error) })),
    );
    return () => {
      isCurrent = false;
    };
  }, [mark, key, mayAsk]);
  return state;
}
