import { REFERENCE_MOLAR_VOLUME, mgM3ToPpm } from '../sums/convert.js';
import type { AirFigures } from './vapour.js';
import { type Day, ONE, type OfLiquid } from './day.js';

/** What a day's uses come to at the bench, all liquids together. */
export interface Levels {
  readonly peakMgM3: number;
  readonly peakAtMin: number;
  readonly peakPpm: number;
  readonly worst15MinMgM3: number;
  readonly average8hMgM3: number;
  /** Sums over liquids, each over its lowest limit; the worst of the three as `combinedShare`. */
  readonly combined: {
    readonly longTerm: number;
    readonly shortTerm: number;
    readonly ceiling: number;
  };
  readonly combinedShare: number;
  readonly shareOfLel: number;
}

const PPM: OfLiquid = ({ vapour }) =>
  vapour.molarMassGMol === undefined
    ? 0
    : mgM3ToPpm(1, vapour.molarMassGMol, REFERENCE_MOLAR_VOLUME);
export const LONG_TERM: OfLiquid = ({ longMgM3 }) => 1 / longMgM3;
const SHORT_TERM: OfLiquid = ({ shortMgM3 }) => 1 / shortMgM3;
const CEILING: OfLiquid = ({ ceilingMgM3 }) => 1 / ceilingMgM3;
const FLAMMABLE: OfLiquid = ({ vapour }) => (vapour.lelMgM3 === undefined ? 0 : 1 / vapour.lelMgM3);

/** All that is measured of a day. */
export const levelsOf = (day: Day): Levels => {
  const { value: peakMgM3, atMin: peakAtMin } = day.peak(ONE);
  const combined = {
    longTerm: day.long(LONG_TERM),
    shortTerm: day.short(SHORT_TERM),
    ceiling: day.peak(CEILING).value,
  };
  return {
    ...{ peakMgM3, peakAtMin },
    peakPpm: day.peak(PPM).value,
    worst15MinMgM3: day.short(ONE),
    average8hMgM3: day.long(ONE),
    combined,
    combinedShare: Math.max(combined.longTerm, combined.shortTerm, combined.ceiling),
    shareOfLel: day.peak(FLAMMABLE).value,
  };
};

/** A limit of what is planned for: 1 is the most. */
export type Burden = (day: Day, times?: OfLiquid) => number;

/** All that limits a day: the limits summed over liquids, and fire. `times` as in Day. */
export const burdensOf = (figures: AirFigures): readonly Burden[] => {
  const most = figures['most-share'];
  return [
    (day, times) => day.short(SHORT_TERM, times) / most,
    (day, times) => day.long(LONG_TERM, times) / most,
    (day, times) => day.peak(CEILING, times).value / most,
    (day, times) => day.peak(FLAMMABLE, times).value / figures['most-share-of-lel'],
  ];
};

/** How much of what is planned for at most is reached, of limits or of fire: 1 is the most. */
export const burdenOf = (figures: AirFigures, day: Day, times?: OfLiquid): number =>
  Math.max(...burdensOf(figures).map((burden) => burden(day, times)));
