import { type Topic, useSupply } from "./supplyStore.ts";

const NARROW_PX = 720;

/** The question opened; at a desk the first is open by itself. */
export function useShownTopic(): Topic | null {
  const topic = useSupply((supply) => supply.topic);
  return topic ?? (innerWidth >= NARROW_PX ? "charge" : null);
}
