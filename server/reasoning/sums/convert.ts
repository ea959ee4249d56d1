import {
  AIR_MOLAR_MASS_G_MOL,
  ATMOSPHERE_PA,
  GAS_CONSTANT,
  PPM_IN_ALL,
  ZERO_C_IN_K,
} from './constants.js';

const LITRES_IN_M3 = 1000;

/**
 * Molar volume that turns limits from ppm into mg/m3, L/mol: the customary one of 25 C and 1 atm
 * (CCOHS, "Converting occupational exposure limits", read). UK and EU tables use 24.05 (20 C);
 * 24.45 makes the limit in mg/m3 the lower one, so the more careful one.
 */
export const REFERENCE_MOLAR_VOLUME = 24.45;

/**
 * Litres that one mole of any vapour fills, `V = R T / P`. Temperature above absolute zero, pressure
 * above 0 (absent: 1 atm). Source: ideal gas law.
 * @example molarVolume({ temperatureC: 20 }) // 24.055
 */
export const molarVolume = ({
  temperatureC,
  pressurePa = ATMOSPHERE_PA,
}: {
  readonly temperatureC: number;
  readonly pressurePa?: number;
}): number => (GAS_CONSTANT * (temperatureC + ZERO_C_IN_K) * LITRES_IN_M3) / pressurePa;

/**
 * Milligrams a cubic metre of so many ppm, `mg/m3 = ppm M / V`; molar mass and molar volume above 0.
 * Source: 29 CFR 1910.1000 and CCOHS, as read.
 */
export const ppmToMgM3 = (ppm: number, molarMassGMol: number, molarVolumeLMol: number): number =>
  (ppm * molarMassGMol) / molarVolumeLMol;

/** Parts per million of so many milligrams a cubic metre, `ppm = mg/m3 V / M`: the other way round. */
export const mgM3ToPpm = (mgM3: number, molarMassGMol: number, molarVolumeLMol: number): number =>
  (mgM3 * molarVolumeLMol) / molarMassGMol;

/**
 * The most vapour that air over a liquid can hold, ppm: `1e6 P / 1 atm`. A liquid that boils
 * (vapour pressure of an atmosphere and more) fills all the air, never more than all.
 * Source: US NRC, Prudent Practices (1981), p. 196, as read.
 */
export const saturatedPpm = (vapourPressurePa: number): number =>
  PPM_IN_ALL * Math.min(1, vapourPressurePa / ATMOSPHERE_PA);

/** The same in mg/m3, at the temperature that the vapour pressure belongs to. Ideal gas law. */
export const saturatedMgM3 = (
  vapourPressurePa: number,
  molarMassGMol: number,
  temperatureC: number,
): number =>
  ppmToMgM3(saturatedPpm(vapourPressurePa), molarMassGMol, molarVolume({ temperatureC }));

/** How heavy a pure vapour is beside air (air = 1): `M / 28.97`. */
export const vapourDensity = (molarMassGMol: number): number =>
  molarMassGMol / AIR_MOLAR_MASS_G_MOL;

/**
 * How heavy air with so many ppm of vapour in it is beside plain air (1): `1 + x (M / 28.97 - 1)`.
 * Thin mixtures of heavy vapours hardly sink; right above a pool they do. Ideal-gas mixing.
 */
export const mixtureDensity = (ppm: number, molarMassGMol: number): number =>
  1 + (ppm / PPM_IN_ALL) * (vapourDensity(molarMassGMol) - 1);
