import { useEffect } from "react";
import { askLong } from "../../../engine/engineClient.ts";
import { faultText } from "../../../engine/faultText.ts";
import { useBench } from "../../../store/benchStore.ts";
import { useJobText } from "../../../store/useJobText.ts";
import { supplyOf, useSupply } from "./supplyStore.ts";

/** A worker of its own: a proof under way keeps the others busy, and what is thought of is to be answered at once. */
export const SUPPLY_WORKER = 2;

/** Keeps the answer in the store true to the job and to what is thought of; the last one stays until the next is there. */
export function useSupplyAsking(): void {
  const text = useJobText();
  const key = useBench((bench) => bench.document?.key ?? "");
  const { changes, trace } = useSupply();
  useEffect(() => supplyOf(key), [key]);
  useEffect(() => {
    if (text === null) return;
    let isCurrent = true;
    useSupply.setState({ isStale: true });
    const question = { changes, traceText: trace?.text ?? null };
    askLong(text, "supplyView", question, undefined, SUPPLY_WORKER).then(
      (view) => isCurrent && useSupply.setState({ view, isStale: false, fault: null }),
      (error: unknown) =>
        isCurrent &&
        useSupply.setState({
          isStale: false,
          fault: faultText(error),
        }),
    );
    return () => {
      isCurrent = false;
    };
  }, [text, key, changes, trace]);
}
