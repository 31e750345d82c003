import { useEffect } from "react";
import { type Prices, refreshPrices, usePrices } from "./priceList.ts";

const AGAIN_MS = 5000;

/** The shop's price list, asked for when a step shows it and then every few seconds, so that two devices show the same prices. */
export function useStock(): Prices {
  useEffect(() => {
    void refreshPrices();
    const timer = setInterval(() => {
      if (document.visibilityState === "visible") void refreshPrices();
    }, AGAIN_MS);
    return () => clearInterval(timer);
  }, []);
  return usePrices();
}
