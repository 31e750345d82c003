import { printQuantity } from "@copperwright/engine/words";

const MILLI_BELOW_A = 0.1;

/** The size of a current as an instrument would show it, small ones in milliamperes. */
export function ampText(currentA: number): string {
  const sizeA = Math.abs(currentA);
  return sizeA < MILLI_BELOW_A ? printQuantity(sizeA * 1000, "mA") : printQuantity(sizeA, "A");
}
