export type { AdiabaticMetal, AdiabaticRise } from "./adiabatic.ts";
export {
  adiabaticAreaMm2,
  adiabaticEndC,
  adiabaticK,
  adiabaticTimeS,
  adiabaticWithstandA2s,
} from "./adiabatic.ts";
export type { AirAtFilm } from "./airAtFilm.ts";
export { airAtFilm } from "./airAtFilm.ts";
export { ambientFactor } from "./ambientFactor.ts";
export type { BundleTemperatures, LoadedBundle } from "./bundleConductorTemperaturesC.ts";
export { bundleConductorTemperaturesC } from "./bundleConductorTemperaturesC.ts";
export { bundleFactor, bundleScaleRatio } from "./bundleFactor.ts";
export type { Bundle, Sleeve } from "./bundlePaths.ts";
export { bundleDiameterMm, bundlePaths } from "./bundlePaths.ts";
export type { Film, FilmProblem } from "./filmCoefficient.ts";
export { filmCoefficient } from "./filmCoefficient.ts";
export type { FuseBand, FusePoint, FuseReading, OpeningTime } from "./fuseOpeningTimeS.ts";
export { fuseOpeningTimeS } from "./fuseOpeningTimeS.ts";
export type { HeatAtConductor } from "./heatAtConductor.ts";
export { heatAtConductor } from "./heatAtConductor.ts";
export { heatCapacityJPerMK } from "./heatCapacity.ts";
export type {
  AirModel,
  ConductorMaterial,
  HeatMaterials,
  InsulationMaterial,
  NusseltBand,
} from "./heatMaterial.ts";
export { heatMaterialFigures, heatMaterials, loomMaterials } from "./heatMaterials.ts";
export type { LossTable } from "./lossTable.ts";
export { lossTable, noLoss } from "./lossTable.ts";
export { nusseltChurchillChu } from "./nusseltChurchillChu.ts";
export { nusseltMorgan } from "./nusseltMorgan.ts";
export type { Duration, DurationLimits, Exposure, FusedLump } from "./peakBehindFuse.ts";
export { peakBehindFuse } from "./peakBehindFuse.ts";
export type { LoadedWire, SteadyWire } from "./steadyConductorTemperatureC.ts";
export { steadyConductorTemperatureC } from "./steadyConductorTemperatureC.ts";
export type { SteadyCurrent } from "./steadyCurrentA.ts";
export { steadyCurrentA } from "./steadyCurrentA.ts";
export type { HeatSource, SteadyState } from "./steadyOnPath.ts";
export { steadyOnPath } from "./steadyOnPath.ts";
export type { Survival, SurvivalQuestion } from "./survives.ts";
export { survives } from "./survives.ts";
export type { ThermalPath } from "./thermalPath.ts";
export type { Lump, Moment } from "./transient.ts";
export { follow } from "./transient.ts";
export type { CurrentStep, HeatHistory } from "./transientHistory.ts";
export { transientHistory } from "./transientHistory.ts";
export { wallResistanceKMPerW } from "./wallResistanceKMPerW.ts";
export type { RoundWire } from "./wireInAir.ts";
export { wireInAirPath } from "./wireInAir.ts";
