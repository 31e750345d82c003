/** Stefan-Boltzmann constant, W/m²K⁴. Follows exactly from the defining constants of the SI (2019). */
export const STEFAN_BOLTZMANN_W_PER_M2K4 = 5.670374419e-8;

/** Standard gravity, m/s². Exact by definition (3rd CGPM, 1901). */
export const STANDARD_GRAVITY_M_PER_S2 = 9.80665;

/** 0 °C in kelvin. Exact by definition. */
export const ZERO_CELSIUS_K = 273.15;

/** The temperature at which `ohmPerM20`, resistivity and the temperature coefficient are stated, °C. */
export const REFERENCE_C = 20;
