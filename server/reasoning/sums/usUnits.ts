/** What US units come to in metric ones; all by definition, from memory. */

export const M_IN_FT = 0.3048;
export const M2_IN_FT2 = M_IN_FT ** 2;
export const M3_IN_FT3 = M_IN_FT ** 3;
/** Cubic metres an hour in one cubic foot a minute. */
export const M3_PER_HOUR_IN_CFM = M3_IN_FT3 * 60;
export const ML_IN_US_PINT = 473.176473;
export const G_IN_LB = 453.59237;
/** Pascals in a millimetre of mercury, and in an inch. */
export const PA_IN_MM_HG = 133.322387;
export const PA_IN_IN_HG = 3386.389;
