import type { Operation } from "@copperwright/engine";
import { useEffect, useState } from "react";
import type { Consequence } from "../../engine/engineApi.ts";
import { front } from "../../engine/engineClient.ts";
import { useBench } from "../../store/benchStore.ts";

/** Tried in the worker on a copy, again after every edit. */
export function useConsequence(operation: Operation | null): Consequence | null {
  const editCount = useBench((bench) => bench.editCount);
  const [tried, setTried] = useState<Consequence | null>(null);
  const words = JSON.stringify(operation);
  useEffect(() => {
    let isCurrent = true;
    setTried(null);
    if (operation !== null) {
      void front.consequence(operation).then((answer) => isCurrent && setTried(answer));
    }
    return () => {
      isCurrent = false;
    };
  }, [words, editCount]);
  return tried;
}
