/** Supply: generators, batteries, charging balance, rides, starting, standing, other volts and the other earth. */

export { type LoadChange, withLedLamps } from "./changedLoads.ts";
export type { Balance, BalanceRow } from "./chargeBalance.ts";
export { chargeBalance } from "./chargeBalance.ts";
export { type ConvertedJob, type ConvertTo, convertJob } from "./convert/convertJob.ts";
export type { ConvertAction, ConvertRow } from "./convert/convertRow.ts";
export type { Cranking, CrankingRow } from "./cranking.ts";
export { type DemandRow, type DemandSum, demandList } from "./demandList.ts";
export { type FallStep, fallOf } from "./fallOf.ts";
export type { LampFall } from "./lampFall.ts";
export type { LampReality } from "./lampReality.ts";
export type { CoilBalance } from "./lightingCoils.ts";
export { readTrace } from "./readTrace.ts";
export { RIDES, type RideName, type RideStep, rideSteps } from "./rideSteps.ts";
export { type Ride, type RideRow, simulateRide } from "./simulateRide.ts";
export type { Standing } from "./standing.ts";
export {
  changedModel,
  type NamedRide,
  type SupplyAnswer,
  type SupplyRequest,
  supplyAnswer,
} from "./supplyAnswer.ts";
export {
  type ModelState,
  type SupplyModel,
  type SupplyOptions,
  supplyModel,
} from "./supplyModel.ts";
export type { SupplySourceRow } from "./supplySourceRows.ts";
