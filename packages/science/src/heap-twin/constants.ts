/** Standard gravity, by definition, m/s². */
export const GRAVITY_MPerS2 = 9.80665;

/** 0 °C on the absolute scale. */
export const ZERO_CELSIUS_K = 273.15;

/** Oxygen in fresh dry air: of its mass and of its volume. */
export const FRESH_OXYGEN_kgPerKg = 0.2314;
export const FRESH_OXYGEN_share = 0.2095;
/** Share of the volume of dry gas for a kilogram of oxygen in a kilogram of it: molar masses 28.97 and 31.998 g/mol. */
export const OXYGEN_VOLUME_PER_MASS: number = 28.97 / 31.998;
/** The temperature at which diffusivities are printed, 20 °C, K. */
export const TWENTY_CELSIUS_K = 293.15;
