import { supplyRule } from "./supplyRule.ts";

/** Shares of riding time in which things draw that do not draw all the time. */
export interface Duties {
  readonly coilRatio: number;
  readonly stopRatio: number;
  /** Indicators lit: share of time switched on × share of that lit. */
  readonly flashRatio: number;
}

/** The duties of tables/supplyRules. */
export function tableDuties(): Duties {
  return {
    coilRatio: supplyRule("coil-duty"),
    stopRatio: supplyRule("stop-duty"),
    flashRatio: supplyRule("turn-duty") * supplyRule("flash-duty"),
  };
}
