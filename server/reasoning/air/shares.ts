import type { AirShare } from '../types.js';
import type { Day } from './day.js';
import type { AirLimit } from './limits.js';
import type { Liquid } from './liquids.js';
import { ONE, type OfLiquid } from './measure.js';

/** Every published limit beside what is expected of it: those that apply first, the lowest of them first. */
export const sharesOf = (day: Day): readonly AirShare[] =>
  day.clouds
    .flatMap(({ liquid }) => {
      const levels = levelsOf(day, liquid);
      return liquid.limits.map((limit) => ({ ...limit, of: levels[limit.kind] / limit.limitMgM3 }));
    })
    .sort((a, b) => Number(b.applies) - Number(a.applies) || a.limitMgM3 - b.limitMgM3);

/** Highest mg/m3 of one liquid, as each kind of limit is compared. */
const levelsOf = (day: Day, liquid: Liquid): Readonly<Record<AirLimit['kind'], number>> => {
  const alone: OfLiquid = (each) => Number(each === liquid);
  const short = day.short.highest(ONE, alone).value;
  return {
    'long-term': day.long.highest(ONE, alone).value,
    'short-term': short,
    excursion: short,
    ceiling: day.peak.highest(ONE, alone).value,
  };
};
