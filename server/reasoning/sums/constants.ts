/** Ideal gas constant, J/(mol K): CODATA. */
export const GAS_CONSTANT = 8.314462618;

/** One standard atmosphere, Pa: by definition. */
export const ATMOSPHERE_PA = 101_325;

/** 0 degrees Celsius, K: by definition. */
export const ZERO_C_IN_K = 273.15;

/** Molar mass of dry air, g/mol: standard atmosphere, from memory. */
export const AIR_MOLAR_MASS_G_MOL = 28.97;

/** Parts of a whole, as ppm count them. */
export const PPM_IN_ALL = 1e6;
