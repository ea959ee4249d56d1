import { ZERO_C_IN_K } from './constants.js';
import { diffusivityM2S, type AirOver, type OpenSurface } from './evaporation.js';
import { G_IN_LB, M2_IN_FT2, M_IN_FT, PA_IN_IN_HG, PA_IN_MM_HG } from './usUnits.js';

/**
 * Evaporation in the other forms that are published, each with the constants and units it is printed
 * with. All from memory: two that were recalled apart and agree are each other's check.
 */

const CM_IN_M = 100;
const S_IN_MIN = 60;
const S_IN_HOUR = 3600;

/**
 * Grams a second by the penetration model, short form:
 * `G = 8.24e-8 M^0.835 P (1/29 + 1/M)^0.25 v^0.5 A / (T^0.05 z^0.5)` (mmHg, ft/min, cm2, K, cm, at
 * 1 atm). Source: US EPA, CEB manual (1991), from memory.
 */
export const penetrationShortGS = (
  { molarMassGMol, vapourPressurePa, temperatureC, areaM2 }: OpenSurface,
  { airSpeedMS, lengthM }: AirOver,
): number =>
  (8.24e-8 *
    molarMassGMol ** 0.835 *
    (vapourPressurePa / PA_IN_MM_HG) *
    (1 / 29 + 1 / molarMassGMol) ** 0.25 *
    Math.sqrt((airSpeedMS / M_IN_FT) * S_IN_MIN) *
    areaM2 *
    CM_IN_M ** 2) /
  ((temperatureC + ZERO_C_IN_K) ** 0.05 * Math.sqrt(lengthM * CM_IN_M));

/**
 * Grams a second by the penetration model in pounds, `13.3792 M P A / T sqrt(D v / z)` lb/h (inHg,
 * ft2, K, ft2/s, ft/min, ft). Source: Hummel, Braun & Fehrenbacher (1996), from memory.
 */
export const penetrationPoundsGS = (
  { molarMassGMol, vapourPressurePa, temperatureC, areaM2 }: OpenSurface,
  { airSpeedMS, lengthM }: AirOver,
): number => {
  const spreadFt2S = diffusivityM2S(molarMassGMol, temperatureC) / M2_IN_FT2;
  const speedFtMin = (airSpeedMS / M_IN_FT) * S_IN_MIN;
  const mass = 13.3792 * molarMassGMol * (vapourPressurePa / PA_IN_IN_HG) * (areaM2 / M2_IN_FT2);
  const poundsHour =
    (mass / (temperatureC + ZERO_C_IN_K)) *
    Math.sqrt((spreadFt2S * speedFtMin) / (lengthM / M_IN_FT));
  return (poundsHour * G_IN_LB) / S_IN_HOUR;
};

/**
 * The liquid factor of the guidance for spills outdoors, pounds a minute off a square foot at a wind
 * factor of 1: `0.284 M^(2/3) P / (82.05 T)` (mmHg, K). Source: EPA 550-B-99-009, from memory.
 */
export const liquidFactor = ({
  molarMassGMol,
  vapourPressurePa,
  temperatureC,
}: Omit<OpenSurface, 'areaM2'>): number =>
  (0.284 * molarMassGMol ** (2 / 3) * (vapourPressurePa / PA_IN_MM_HG)) /
  (82.05 * (temperatureC + ZERO_C_IN_K));

/** The wind factor of that guidance, `u^0.78` (m/s); it is written for 1.5 m/s and prints 1.4. */
export const windFactor = (airSpeedMS: number): number => airSpeedMS ** 0.78;

/** Grams a second off a pool by that guidance: liquid factor, wind factor and area. */
export const outdoorPoolGS = (surface: OpenSurface, wind: number): number =>
  (liquidFactor(surface) * wind * (surface.areaM2 / M2_IN_FT2) * G_IN_LB) / S_IN_MIN;
