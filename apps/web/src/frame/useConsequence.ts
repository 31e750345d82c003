import type { Operation } from "@copperwright/engine";
import { useEffect, useState } from "react";
import type { Consequence } from "../engine/engineApi.ts";
import { front } from "../engine/engineClient.ts";
import { usePrices } from "../steps/parts/priceList.ts";
import { useBench } from "../store/benchStore.ts";

/** Tried in the worker on a copy, again after every edit. */
export function useConsequence(operation: Operation | null): Consequence | null {
  const editCount = useBench((bench) => bench.editCount);
  const priceList = usePrices(({ list }) => list?.text ?? null);
  const [tried, setTried] = useState<Consequence | null>(null);
  const words = JSON.stringify(operation);
  useEffect(() => {
    let isCurrent = true;
    setTried(null);
    if (operation !== null) {
      front.consequence(operation, priceList).then(
        (answer) => isCurrent && setTried(answer),
        () => undefined,
      );
    }
    return () => {
      isCurrent = false;
    };
  }, [words, editCount, priceList]);
  return tried;
}
