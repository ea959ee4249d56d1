import { ATMOSPHERE_PA, GAS_CONSTANT, ZERO_C_IN_K } from './constants.js';
import { saturatedMgM3 } from './convert.js';

/** Water over still indoor air, m/s, and its molar mass: Crowl & Louvar, chapter 3, from memory. */
const WATER_TRANSFER_M_S = 0.0083;
const WATER_MOLAR_MASS_G_MOL = 18;

/** Diffusivity in air, cm2/s, molar masses in g/mol: US EPA, CEB manual (1991), from memory. */
const DIFFUSIVITY = { times: 4.09e-5, temperature: 1.9, mass: -0.33, air: 29 } as const;
const M2_IN_CM2 = 1e-4;

/** A liquid lying open. Temperature is the liquid's own, pressure that of its vapour there. */
export interface OpenSurface {
  readonly molarMassGMol: number;
  readonly vapourPressurePa: number;
  readonly temperatureC: number;
  readonly areaM2: number;
}

/** Air that moves over it. */
export interface AirOver {
  readonly airSpeedMS: number;
  /** Of the surface, along the way of the air; above 0. */
  readonly lengthM: number;
}

/**
 * How fast vapour leaves a surface in a room, m/s, from that of water: `K = K0 (18 / M)^(1/3)`.
 * Molar mass above 0. Source: Crowl & Louvar, chapter 3, from memory.
 * @example massTransfer(92) // 0.00482
 */
export const massTransfer = (
  molarMassGMol: number,
  waterTransferMS: number = WATER_TRANSFER_M_S,
): number => waterTransferMS * Math.cbrt(WATER_MOLAR_MASS_G_MOL / molarMassGMol);

/** Grams in a cubic metre of the vapour at its own pressure, `M P / (R T)`. Ideal gas law. */
const vapourGM3 = ({ molarMassGMol, vapourPressurePa, temperatureC }: OpenSurface): number =>
  (molarMassGMol * vapourPressurePa) / (GAS_CONSTANT * (temperatureC + ZERO_C_IN_K));

/**
 * Grams a second off an open surface, `G = M K A P / (R T)`, with K in m/s.
 * Source: Crowl & Louvar, chapter 3, from memory.
 */
export const openSurfaceGS = (
  surface: OpenSurface,
  transferMS: number = massTransfer(surface.molarMassGMol),
): number => vapourGM3(surface) * transferMS * surface.areaM2;

/**
 * How fast a vapour spreads through air, m2/s, `D = 4.09e-5 T^1.9 (1/29 + 1/M)^0.5 M^-0.33 / P`
 * (cm2/s, K, atm). Source: US EPA, CEB manual (1991), from memory.
 */
export const diffusivityM2S = (
  molarMassGMol: number,
  temperatureC: number,
  pressurePa: number = ATMOSPHERE_PA,
): number =>
  (M2_IN_CM2 *
    DIFFUSIVITY.times *
    (temperatureC + ZERO_C_IN_K) ** DIFFUSIVITY.temperature *
    Math.sqrt(1 / DIFFUSIVITY.air + 1 / molarMassGMol) *
    molarMassGMol ** DIFFUSIVITY.mass) /
  (pressurePa / ATMOSPHERE_PA);

/**
 * Grams a second off a surface that air moves over, `G = 2 (M P / R T) A sqrt(D v / (pi z))`: the
 * penetration model. Source: US EPA, CEB manual (1991), and Hummel, Braun & Fehrenbacher, Am. Ind.
 * Hyg. Assoc. J. 57:519-527 (1996), both from memory.
 */
export const penetrationGS = (surface: OpenSurface, { airSpeedMS, lengthM }: AirOver): number =>
  2 *
  vapourGM3(surface) *
  surface.areaM2 *
  Math.sqrt(
    (diffusivityM2S(surface.molarMassGMol, surface.temperatureC) * airSpeedMS) /
      (Math.PI * lengthM),
  );

/**
 * All of a spill in the air of a closed room, mg/m3: the upper bound. `m / V`, never more than the
 * air can hold where the vapour pressure is said. Volume above 0.
 * Source: J. Kuo, Practical Design Calculations, example 2.4, as read.
 */
export const spillMgM3 = ({
  ml,
  densityKgL,
  volumeM3,
  vapour,
}: {
  readonly ml: number;
  readonly densityKgL: number;
  readonly volumeM3: number;
  readonly vapour?: Omit<OpenSurface, 'areaM2'>;
}): number =>
  Math.min(
    (ml * densityKgL * MG_IN_G) / volumeM3,
    vapour === undefined
      ? Infinity
      : saturatedMgM3(vapour.vapourPressurePa, vapour.molarMassGMol, vapour.temperatureC),
  );

const MG_IN_G = 1000;
