export { awgAreaMm2, awgDiameterMm, printAwg } from "./awg.ts";
export {
  circleAreaMm2,
  circleDiameterMm,
  MM_PER_CM,
  MM_PER_FOOT,
  MM_PER_INCH,
  MM_PER_M,
  MM2_PER_CIRCULAR_MIL,
} from "./exactUnits.ts";
export { printedUnits, printNumber, printQuantity } from "./printQuantity.ts";
export { printStranding, printWire } from "./printWire.ts";
export { type LengthGuess, type LengthReading, readLength } from "./readLength.ts";
export { readNumber } from "./readNumber.ts";
export { readWireName } from "./readWireName.ts";
export { type Stranding, strandAreaMm2 } from "./strandAreaMm2.ts";
export type { WallWord, WireName, WireNameReading, WireNameRefusal } from "./wireName.ts";
