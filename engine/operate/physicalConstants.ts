/** Constants of nature. Boltzmann's constant over the elementary charge, V/K (CODATA 2014: 1.38064852e-23 / 1.6021766208e-19). */
const BOLTZMANN_OVER_CHARGE_V_PER_K = 1.38064852e-23 / 1.6021766208e-19;

/** Junction temperature every diode law is stated at, °C. */
export const JUNCTION_C = 27;

/** kT/q at that temperature, V. */
export const THERMAL_V = BOLTZMANN_OVER_CHARGE_V_PER_K * (JUNCTION_C + 273.15);
