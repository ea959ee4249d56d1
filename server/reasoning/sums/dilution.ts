import { PPM_IN_ALL, ZERO_C_IN_K } from './constants.js';

/**
 * Air that thins vapour as it arises, steady state. A flow comes out in the unit of the vapour that
 * goes in: cubic metres an hour, cubic feet a minute. Formulas: ACGIH, Industrial Ventilation,
 * chapter 2, from memory.
 */

/** Cubic feet of vapour off a US pint, times molar mass over specific gravity, at 70 F: as read. */
const US_VAPOUR = 403;

/** The temperature that this constant and printed flows stand for: 70 F. */
const PRINTED_K = 294.3;

/** Above 250 F vapour catches fire earlier; the manual then counts with 0.7 of the limit. */
const HOT_ABOVE_C = 121.1;
const HOT_FACTOR = 0.7;

const ML_IN_L = 1000;
const PERCENT_IN_ALL = 100;

/** Vapour off a liquid, m3/h: `Gv = (l/h x kg/l / M) V`. Molar mass above 0. */
export const vapourM3PerHour = ({
  mlPerHour,
  densityKgL,
  molarMassGMol,
  molarVolumeLMol,
}: {
  readonly mlPerHour: number;
  readonly densityKgL: number;
  readonly molarMassGMol: number;
  readonly molarVolumeLMol: number;
}): number => ((mlPerHour / ML_IN_L) * densityKgL * molarVolumeLMol) / molarMassGMol;

/** Vapour off a liquid at 70 F, cubic feet a minute: `403 SG ER / MW`. Molar mass above 0. */
export const vapourCfm = ({
  pintsPerMin,
  specificGravity,
  molarMassGMol,
}: {
  readonly pintsPerMin: number;
  readonly specificGravity: number;
  readonly molarMassGMol: number;
}): number => (US_VAPOUR * specificGravity * pintsPerMin) / molarMassGMol;

/**
 * Air that keeps a vapour at its limit, `Q = K Gv 1e6 / C`. Undefined where the limit is 0: no air
 * is enough.
 */
export const healthFlow = (
  vapour: number,
  { limitPpm, mixingFactor }: { readonly limitPpm: number; readonly mixingFactor: number },
): number | undefined =>
  limitPpm > 0 ? (mixingFactor * vapour * PPM_IN_ALL) / limitPpm : undefined;

/**
 * Level that vapour and air settle at, ppm, `C = K Gv 1e6 / Q`, never more than all of the air.
 * Undefined where no air moves: it settles nowhere.
 */
export const roomPpm = (
  vapour: number,
  { flow, mixingFactor }: { readonly flow: number; readonly mixingFactor: number },
): number | undefined =>
  flow > 0 ? Math.min(PPM_IN_ALL, (mixingFactor * vapour * PPM_IN_ALL) / flow) : undefined;

/**
 * Air that keeps a vapour at so small a share of its lower flammable limit (0.25: a safety factor of
 * 4), `Q = 100 Gv Sf / (LEL B)`; `heatFactor` is B. Undefined where limit or share is 0.
 */
export const fireFlow = (
  vapour: number,
  {
    lelPercent,
    shareOfLel,
    heatFactor = 1,
  }: { readonly lelPercent: number; readonly shareOfLel: number; readonly heatFactor?: number },
): number | undefined => {
  const least = lelPercent * shareOfLel * heatFactor;
  return least > 0 ? (vapour * PERCENT_IN_ALL) / least : undefined;
};

/** B of the fire formula: 1 up to 250 F (121 C), 0.7 above. */
export const heatFactor = (temperatureC: number): number =>
  temperatureC > HOT_ABOVE_C ? HOT_FACTOR : 1;

/** A flow of air as it swells when hot, `Q (T / 294.3 K)`; the flow that goes in is at 70 F. */
export const hotFlow = (flow: number, temperatureC: number): number =>
  (flow * (temperatureC + ZERO_C_IN_K)) / PRINTED_K;

/**
 * Fresh air for one measure of liquid, in the unit of the vapour that the measure gives:
 * `Sf (100 - LEL) vapour / LEL`. Source: 29 CFR 1910.94(c)(6)(ii), from memory. Undefined where the
 * limit is 0.
 */
export const airForMeasure = (
  vapour: number,
  { lelPercent, safetyFactor }: { readonly lelPercent: number; readonly safetyFactor: number },
): number | undefined =>
  lelPercent > 0 ? (safetyFactor * (PERCENT_IN_ALL - lelPercent) * vapour) / lelPercent : undefined;

/** Flows that add up, as vapours that act alike need; undefined where no air is enough for one. */
export const summedFlow = (flows: readonly (number | undefined)[]): number | undefined =>
  flows.reduce<number | undefined>(
    (sum, flow) => (sum === undefined || flow === undefined ? undefined : sum + flow),
    0,
  );
