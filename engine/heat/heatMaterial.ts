/** What a conductor is made of. All figures come from the caller's tables; this room holds none. */
export interface ConductorMaterial {
  /** Resistivity at 20 °C, Ω·m. */
  readonly resistivityOhmM: number;
  /** R(T) = R20 · (1 + alphaPerK · (T − 20 °C)). */
  readonly alphaPerK: number;
  /** Heat capacity by volume, J/m³K. */
  readonly volumetricHeatJPerM3K: number;
}

/** What is around the conductor. */
export interface InsulationMaterial {
  readonly conductivityWPerMK: number;
  readonly volumetricHeatJPerM3K: number;
  /** Radiating power of the outer surface against a black one, 0..1. */
  readonly emissivityRatio: number;
}

/**
 * Air as four fitted formulas of the film temperature T in kelvin:
 * viscosity µ = viscosityPaSPerRootK · T^1.5 / (T + viscosityOffsetK), conductivity
 * k = conductivityWPerMPerKRootK · T^1.5 / (T + conductivityOffsetK · 10^(−conductivityDecayK / T)),
 * density ρ = pressurePa / (gasConstantJPerKgK · T), heat capacity constant.
 */
export interface AirModel {
  readonly viscosityPaSPerRootK: number;
  readonly viscosityOffsetK: number;
  readonly conductivityWPerMPerKRootK: number;
  readonly conductivityOffsetK: number;
  readonly conductivityDecayK: number;
  readonly gasConstantJPerKgK: number;
  readonly heatCapacityJPerKgK: number;
  readonly pressurePa: number;
}

/** One row of a piecewise power law Nu = coefficientRatio · Ra^exponent for rayleighMin ≤ Ra < rayleighMax. */
export interface NusseltBand {
  readonly rayleighMinRatio: number;
  readonly rayleighMaxRatio: number;
  readonly coefficientRatio: number;
  readonly exponent: number;
}

/** Everything the steady and transient models ask of the tables. */
export interface HeatMaterials {
  readonly conductor: ConductorMaterial;
  readonly insulation: InsulationMaterial;
  readonly air: AirModel;
  /** The second correlation, used for the uncertainty band only. Empty: no band is reported. */
  readonly morganBands: readonly NusseltBand[];
}
