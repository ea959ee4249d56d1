import {
  M2_IN_FT2,
  M3_IN_FT3,
  M3_PER_HOUR_IN_CFM,
  M_IN_FT,
  ML_IN_US_PINT,
  mixingFactorOf,
  PA_IN_MM_HG,
} from '../../reasoning/index.js';

/** A unit that a number can be given in, the end of its key: `volume` + `M3`. */
export interface Unit {
  readonly suffix: string;
  readonly toBase: (value: number) => number;
  readonly fromBase: (value: number) => number;
}

const times = (suffix: string, factor = 1): Unit => ({
  suffix,
  toBase: (value) => value * factor,
  fromBase: (value) => value / factor,
});

const MIXING_EFFICIENCY: Unit = {
  suffix: 'Efficiency',
  toBase: (value) => mixingFactorOf(value) ?? Infinity,
  fromBase: (value) => 1 / value,
};

/** 32 F is 0 C, and 9 F are 5 C. */
const FAHRENHEIT: Unit = {
  suffix: 'F',
  toBase: (value) => ((value - 32) * 5) / 9,
  fromBase: (value) => (value * 9) / 5 + 32,
};

const L_IN_M3 = 1000;
const S_IN_HOUR = 3600;
const S_IN_MIN = 60;
const MIN_IN_HOUR = 60;
const PPM_IN_PERCENT = 1e4;
/** Litres a second in a cubic foot a minute. */
const LS_IN_CFM = (M3_PER_HOUR_IN_CFM * L_IN_M3) / S_IN_HOUR;
/** People on 100 m2 for one on 1,000 square feet. */
const ON_100_M2 = 100 / (1000 * M2_IN_FT2);

/**
 * What can be measured, each with its units: the first is metric and what the sums count with, US
 * ones follow. Only `level` and `vapourRate` hold units that no factor joins.
 */
const QUANTITIES = {
  plain: [times('')],
  percent: [times('Percent')],
  volume: [times('M3'), times('Ft3', M3_IN_FT3)],
  flow: [times('M3PerHour'), times('Cfm', M3_PER_HOUR_IN_CFM)],
  air: [times('M3PerHour'), times('Cfm', M3_PER_HOUR_IN_CFM), times('ChangesPerHour')],
  changes: [times('PerHour')],
  cfm: [times('Cfm')],
  liquid: [times('Ml'), times('UsPints', ML_IN_US_PINT)],
  liquidRate: [times('MlPerHour'), times('UsPintsPerHour', ML_IN_US_PINT)],
  liquidDensity: [times('KgL')],
  molarMass: [times('GMol')],
  molarVolume: [times('LMol')],
  level: [times('Ppm'), times('MgM3')],
  mgM3: [times('MgM3')],
  ppm: [times('Ppm')],
  vapourRate: [times('M3PerHour'), times('Cfm', M3_PER_HOUR_IN_CFM), times('GPerHour')],
  inAir: [times('Percent'), times('Ppm', 1 / PPM_IN_PERCENT)],
  temperature: [times('C'), FAHRENHEIT],
  pressure: [times('Pa'), times('MmHg', PA_IN_MM_HG)],
  length: [times('M'), times('Ft', M_IN_FT)],
  area: [times('M2'), times('Ft2', M2_IN_FT2)],
  airSpeed: [times('MPerSec'), times('FtPerMin', M_IN_FT / S_IN_MIN)],
  speed: [times('MPerSec')],
  spread: [times('M2PerSec')],
  rate: [times('GPerHour')],
  mixing: [times('Factor'), MIXING_EFFICIENCY],
  time: [times('Minutes'), times('Hours', MIN_IN_HOUR)],
  minutes: [times('Minutes')],
  hours: [times('Hours')],
  personRate: [times('LPerSec'), times('Cfm', LS_IN_CFM)],
  floorRate: [times('LPerSecM2'), times('CfmPerFt2', LS_IN_CFM / M2_IN_FT2)],
  crowd: [times('Per100M2'), times('Per1000Ft2', ON_100_M2)],
} as const satisfies Readonly<Record<string, readonly Unit[]>>;

export type Quantity = keyof typeof QUANTITIES;

/** The units of a quantity, metric first. */
export const unitsOf = (quantity: Quantity): readonly Unit[] => QUANTITIES[quantity];
