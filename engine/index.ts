/** The front door: everything that computes. Papers have their own door, `paper.ts`, so that a verdict never loads the PDF library. */
export * from "./job/index.ts";
export type * from "./judge/checkResult.ts";
export {
  type CheckedJob,
  type Conversion,
  checkedJob,
  checkJob,
  conversionOf,
  type Design,
  type Plan,
  planJob,
  recheckedJob,
  supplyOfJob,
  type WireFact,
  type WireFacts,
  wireFacts,
} from "./judge/index.ts";
export type * from "./messages/index.ts";
export { explanationOf } from "./messages/index.ts";
export {
  type Faulted,
  flashesPerMinute,
  type Metered,
  type MeterQuestion,
  type MeterReading,
  meterReading,
  type OperateRequest,
  type OperateSolution,
  type OperateState,
  operateJob,
  type SetFault,
  spiceText,
  withFaults,
} from "./operate/index.ts";
export {
  type Bought,
  conversionCost,
  type Good,
  type GoodKind,
  type PricedRow,
  type PricedShopping,
  pricedShopping,
  readStockList,
  type StockList,
  type StockReading,
  type StockRow,
  shoppingGoods,
} from "./papers/stock/index.ts";
export {
  type FaultStage,
  type FaultStory,
  type FirstPart,
  faultStory,
  mergedFirst,
  type PlottedJob,
  type ProofInput,
  type ProvedFinding,
  type ProveResult,
  preparedProof,
  proofWork,
  provedResult,
  proveFirst,
  proveJob,
  proveOnTrial,
  proveSecond,
  type SecondPart,
  type Share,
  type TimeCurrent,
  timeCurrentOf,
  timeCurrentsOf,
  type WireHistory,
  type WireTemperature,
  wireTemperatures,
  withTriedChanges,
} from "./prove/index.ts";
export { type BundleAnswer, bundleAnswer } from "./route/index.ts";
export {
  type ChangeToTry,
  changesToTry,
  makesNamed,
  type NamedMakes,
  type WireAnswer,
  type WireQuestion,
  wireAnswer,
} from "./size/index.ts";
export {
  type Balance,
  type ConvertTo,
  type LoadChange,
  readTrace,
  type SupplyAnswer,
  type SupplyRequest,
} from "./supply/index.ts";
export { printNumber, printQuantity } from "./units/index.ts";
export { ENGINE_VERSION } from "./version.ts";
