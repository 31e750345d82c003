/** Operate: a job as a network, solved in one state or in many, read in trade words. */

export { type BatterySource, batterySource } from "./batterySource.ts";
export { buildJobNetwork, type JobNetwork, pinsToTakeApart } from "./buildJobNetwork.ts";
export { carriedOver, type Ended } from "./carriedOver.ts";
export {
  type BothSolutions,
  type CompiledJob,
  compileJob,
  type QuickSolution,
  withBattery,
} from "./compileJob.ts";
export { coveringRows } from "./coveringRows.ts";
export { type AcNet, type CurrentNets, currentNets } from "./currentNets.ts";
export { expectedOf } from "./expectedOf.ts";
export { flashesPerMinute } from "./flashesPerMinute.ts";
export { type FuseBandOfPart, fuseBand, fuseOpensS } from "./fuseBand.ts";
export {
  fitGeneratorLine,
  type GeneratorLine,
  generatorCurrentA,
  type OutputPoint,
  openCircuitV,
  shortedCurrentA,
} from "./generatorLine.ts";
export { type IndependentJobs, independentJobs } from "./independentJobs.ts";
export type { ElementRole, JobElement } from "./jobElement.ts";
export { type JobNodes, nodeLabel, referencePin } from "./jobNodes.ts";
export { type LampAnchor, lampAnchor, lampLaw } from "./lampLaw.ts";
export { ASSUMED_LENGTH_MM, conductorOhm } from "./loomElements.ts";
export {
  type Metered,
  type MeterQuestion,
  type MeterReading,
  meterReading,
} from "./meterReading.ts";
export type { Conditions } from "./networkContext.ts";
export { onSameNetwork } from "./onSameNetwork.ts";
export { type Operated, operateJob } from "./operateJob.ts";
export type * from "./operateResult.ts";
export {
  conditionsOf,
  DEAD_SHORT_OHM,
  EARTH,
  RUNNING_RPM,
  readState,
  restPositions,
} from "./readState.ts";
export { kneeV } from "./regulatedCurve.ts";
export { remembering } from "./remembering.ts";
export { resistedAnew } from "./resistedAnew.ts";
export { solveState } from "./solveState.ts";
export { type Spice, type SpiceRelays, spiceOf, spiceText } from "./spiceText.ts";
export { type FullState, startingStates } from "./startingStates.ts";
export { type NetworkState, type QuickState, stateTranslator } from "./stateOverrides.ts";
export type { SupplySource } from "./supplySources.ts";
export { withCopper } from "./withCopper.ts";
export { type Faulted, type SetFault, withFaults } from "./withFaults.ts";
export { type WorstCurrent, type WorstCurrents, worstCurrents } from "./worstCurrents.ts";
