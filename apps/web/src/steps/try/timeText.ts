import { printNumber, printQuantity } from "@copperwright/engine/words";

const MINUTE_S = 60;
const HOUR_S = 3600;

/** A length of time as one would say it: `40 ms`, `1.5 s`, `2.0 min`, `3.0 h`. */
export function timeText(timeS: number): string {
  if (timeS < 0.1) return `${printNumber(timeS * 1000, timeS < 0.01 ? 1 : 0)}\u00a0ms`;
  if (timeS < 2 * MINUTE_S) return printQuantity(timeS, "s");
  if (timeS < 2 * HOUR_S) return `${printNumber(timeS / MINUTE_S, 0)}\u00a0min`;
  return printQuantity(timeS / HOUR_S, "h");
}
