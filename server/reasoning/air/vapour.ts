import type { AirFigureId, Bottle, Substance } from '../types.js';
import { ATMOSPHERE_PA, ZERO_C_IN_K } from '../sums/constants.js';
import { REFERENCE_MOLAR_VOLUME, ppmToMgM3, saturatedMgM3 } from '../sums/convert.js';
import { massTransfer } from '../sums/evaporation.js';

/** Figures of airing.yaml by id. */
export type AirFigures = Readonly<Record<AirFigureId, number>>;

/** A liquid as the air model sees it. */
export interface Vapour {
  /** Milligrams that one millilitre gives when all of it evaporates. */
  readonly mgMl: number;
  /** mg/m3 that the air over it cannot exceed; `Infinity` where no vapour pressure is known. */
  readonly mostMgM3: number;
  /** Share of a wiped film that goes in a minute; `Infinity`: at once. */
  readonly fadePerMin: number;
  /** Lower flammable limit, mg/m3. */
  readonly lelMgM3?: number;
  readonly molarMassGMol?: number;
}

/** Why a liquid has no vapour to work out. */
export type NoVapour = 'no-vapour' | 'no-figures';

const MG_IN_G = 1000;
const G_IN_M3_OF_WATER = 1e6;
const MM_IN_M = 1000;
const SECONDS_IN_MINUTE = 60;
const PPM_IN_PERCENT = 1e4;
/** The temperature that the tables' vapour pressures stand for, C. */
const TABLE_C = 20;

/**
 * Vapour of a substance at a temperature, a bottle's own figures before the table's (of several, the
 * one that gives more). What no vapour pressure is known of evaporates at once and fills the air
 * without end: the careful side. Powders and other rows without a density cannot be worked out.
 */
export const vapourOf = (
  substance: Substance,
  bottles: readonly Bottle[],
  temperatureC: number,
  figures: AirFigures,
  nonVolatileBelowPa: number,
): Vapour | NoVapour => {
  const { densityGMl, molarMassGMol, lelPercent } = substance;
  const pressures = ownOr(bottles, (bottle) => bottle.vapourPressurePa, substance.vapourPressurePa);
  const boils = ownOr(bottles, (bottle) => bottle.boilingPointC, substance.boilingPointC);
  const tablePa = pressures.length === 0 ? undefined : Math.max(...pressures);
  if (tablePa !== undefined && tablePa < nonVolatileBelowPa) return 'no-vapour';
  if (densityGMl === undefined) return 'no-figures';
  const common = {
    mgMl: densityGMl * MG_IN_G,
    ...(molarMassGMol === undefined ? {} : { molarMassGMol }),
    ...(molarMassGMol === undefined || lelPercent === undefined
      ? {}
      : {
          lelMgM3: ppmToMgM3(lelPercent * PPM_IN_PERCENT, molarMassGMol, REFERENCE_MOLAR_VOLUME),
        }),
  };
  if (tablePa === undefined || molarMassGMol === undefined) {
    return { ...common, mostMgM3: Infinity, fadePerMin: Infinity };
  }
  const pressurePa = pressureAt(temperatureC, tablePa, Math.min(...boils));
  const mostMgM3 = saturatedMgM3(pressurePa, molarMassGMol, temperatureC);
  const filmGM2 = (densityGMl * G_IN_M3_OF_WATER * figures['film-thickness-mm']) / MM_IN_M;
  const leavesGM2S =
    (massTransfer(molarMassGMol, figures['water-transfer-m-s']) * mostMgM3) / MG_IN_G;
  return { ...common, mostMgM3, fadePerMin: (leavesGM2S / filmGM2) * SECONDS_IN_MINUTE };
};

/** What the bottles say; what one of them leaves out, the table says. */
const ownOr = (
  bottles: readonly Bottle[],
  of: (bottle: Bottle) => number | undefined,
  table: number | undefined,
): readonly number[] => {
  const said = bottles.length === 0 ? [table] : bottles.map((bottle) => of(bottle) ?? table);
  return said.filter((value) => value !== undefined);
};

/**
 * Vapour pressure at another temperature, from two published points: the table's and the boiling
 * point (Clausius and Clapeyron: ln P is straight in 1/T). Without a boiling point, as in the table.
 */
const pressureAt = (temperatureC: number, tablePa: number, boilsC: number): number => {
  if (!(boilsC > TABLE_C) || !Number.isFinite(boilsC) || tablePa >= ATMOSPHERE_PA) return tablePa;
  const inverse = (celsius: number): number => 1 / (celsius + ZERO_C_IN_K);
  const steep = Math.log(ATMOSPHERE_PA / tablePa) / (inverse(TABLE_C) - inverse(boilsC));
  return tablePa * Math.exp(steep * (inverse(TABLE_C) - inverse(temperatureC)));
};
