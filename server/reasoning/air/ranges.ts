import type { AirAnswer, AirRange } from '../types.js';
import type { Day } from './day.js';
import { type Levels, levelsOf } from './levels.js';
import type { Ends } from './room.js';

/** Ends of the guesses that let most, and least, vapour stand in the room. */
export const WORST: Ends = { air: 'low', mixing: 'high', captured: 'low' };
export const BEST: Ends = { air: 'high', mixing: 'low', captured: 'high' };

/** A day at one end of what was guessed, with liquids that dry quickly and with such that dry slowly. */
export interface End {
  readonly quick: Day;
  readonly slow: Day;
}

/**
 * Least and most over all that was guessed: air, mixing, what is caught, and drying so many times as
 * quick or as slow. Quick drying stands highest; slow drying can last longest.
 */
export const rangesOf = (
  counted: { readonly levels: Levels; readonly airOutMin: number | undefined },
  worst: End,
  best: End,
  airOut: (day: Day) => number | undefined,
): AirAnswer['ranges'] => {
  const levels = [counted.levels, levelsOf(worst.quick), levelsOf(best.slow)];
  const days = [worst.quick, worst.slow, best.quick, best.slow];
  return {
    peakMgM3: rangeOf(levels.map((each) => each.peakMgM3)),
    worst15MinMgM3: rangeOf(levels.map((each) => each.worst15MinMgM3)),
    average8hMgM3: rangeOf(levels.map((each) => each.average8hMgM3)),
    combinedShare: rangeOf(levels.map((each) => each.combinedShare)),
    shareOfLel: rangeOf(levels.map((each) => each.shareOfLel)),
    airOutMin: rangeOf([counted.airOutMin, ...days.map(airOut)]),
  };
};

/** Least and most; what is never reached has no high end, and no low one if none is reached. */
const rangeOf = (values: readonly (number | undefined)[]): AirRange => {
  const known = values.filter((value) => value !== undefined);
  return {
    ...(known.length === 0 ? {} : { low: Math.min(...known) }),
    ...(known.length < values.length ? {} : { high: Math.max(...known) }),
  };
};
