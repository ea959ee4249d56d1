import { REFERENCE_MOLAR_VOLUME, mgM3ToPpm } from '../sums/convert.js';
import type { AirFigures } from './vapour.js';
import type { Day } from './day.js';
import { ONE, type OfLiquid } from './measure.js';

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
export const levelsOf = ({ peak, short, long }: Day): Levels => {
  const { value: peakMgM3, atMin: peakAtMin } = peak.highest(ONE);
  const combined = {
    longTerm: long.highest(LONG_TERM).value,
    shortTerm: short.highest(SHORT_TERM).value,
    ceiling: peak.highest(CEILING).value,
  };
  return {
    ...{ peakMgM3, peakAtMin },
    peakPpm: peak.highest(PPM).value,
    worst15MinMgM3: short.highest(ONE).value,
    average8hMgM3: long.highest(ONE).value,
    combined,
    combinedShare: Math.max(combined.longTerm, combined.shortTerm, combined.ceiling),
    shareOfLel: peak.highest(FLAMMABLE).value,
  };
};

/** Something that limits a day: what is measured, weighed how, and the most that is planned for. */
export interface Burden {
  readonly of: 'peak' | 'short' | 'long';
  readonly weight: OfLiquid;
  readonly most: number;
}

/** All that limits a day: the limits summed over liquids, and fire. */
export const burdensOf = (figures: AirFigures): readonly Burden[] => {
  const most = figures['most-share'];
  return [
    { of: 'short', weight: SHORT_TERM, most },
    { of: 'long', weight: LONG_TERM, most },
    { of: 'peak', weight: CEILING, most },
    { of: 'peak', weight: FLAMMABLE, most: figures['most-share-of-lel'] },
  ];
};

/** How much of the most that is planned for is reached, by one of the limits: 1 is the most. */
export const reachedOf = (day: Day, { of, weight, most }: Burden): number =>
  day[of].highest(weight).value / most;

/** The same by whichever limit is nearest, of limits or of fire. */
export const burdenOf = (figures: AirFigures, day: Day): number =>
  Math.max(...burdensOf(figures).map((burden) => reachedOf(day, burden)));
