import { sure } from '../book/sure.js';
import type { Liquid } from './liquids.js';
import { type Source, type Track, makeTrack } from './track.js';
import { type Paces, type Worst, peakOf, worstMeanOf } from './worst.js';
import type { Zones } from './zones.js';

/** A liquid, and what it does in the air of the room. */
export interface InAir {
  readonly liquid: Liquid;
  readonly sources: readonly Source[];
  readonly track: Track;
}

/** A figure for each liquid. */
export type OfLiquid = (liquid: Liquid) => number;

export const ONE: OfLiquid = () => 1;

/**
 * Something of which the highest at the bench is asked: the level itself, or its mean over a window.
 * `weight` is what a milligram of a liquid counts for (1, or its share of some limit), `times` how
 * many times as much of it there were; absent: once.
 */
export interface Measure {
  /** No more than the air can hold of each liquid. */
  readonly highest: (weight: OfLiquid, times?: OfLiquid) => Worst;
  /**
   * How many times as much of one liquid there may be until the highest is at a level, with `times`
   * of the others. 0 where those are over it already; undefined: it never gets there.
   */
  readonly timesUntil: (
    level: number,
    liquid: Liquid,
    weight: OfLiquid,
    times: OfLiquid,
  ) => number | undefined;
}

/** The air that liquids are in. */
export interface Air {
  readonly zones: Zones;
  readonly paces: Paces;
}

/** The highest level. */
export const makePeak = (clouds: readonly InAir[], { zones, paces }: Air): Measure =>
  makeMeasure(
    clouds,
    zones,
    (track) => peakOf(track, paces),
    (track, atMin) => track.near(atMin),
  );

/** The highest mean over a window. */
export const makeMean = (
  clouds: readonly InAir[],
  { zones, paces }: Air,
  windowMin: number,
): Measure =>
  makeMeasure(
    clouds,
    zones,
    (track) => worstMeanOf(track, paces, windowMin, peakOf(track, paces).value),
    (track, atMin) => (track.nearSum(atMin) - track.nearSum(atMin - windowMin)) / windowMin,
  );

/** Liquids as one, each weighed: vapours in one air add up, so their sources do. */
export const together = (clouds: readonly InAir[], zones: Zones, weight: OfLiquid): Track =>
  makeTrack(
    zones,
    clouds.flatMap(({ liquid, sources }) => {
      const each = weight(liquid);
      return sources.map((source) => ({ ...source, mgMin: source.mgMin * each }));
    }),
  );

const NOTHING: Worst = { value: 0, atMin: 0 };

const makeMeasure = (
  clouds: readonly InAir[],
  zones: Zones,
  find: (track: Track) => Worst,
  levelAt: (track: Track, atMin: number) => number,
): Measure => {
  // Alone in the air, all follows from one milligram: searched once, when it is first asked for.
  const known: Worst[] = [];
  const uncapped = (weight: OfLiquid, times: OfLiquid): Worst => {
    const weighed: OfLiquid = (liquid) => weight(liquid) * times(liquid);
    const places = [...clouds.keys()].filter((place) => weighed(sure(clouds[place]).liquid) > 0);
    const [only, ...others] = places;
    if (only === undefined) return NOTHING;
    if (others.length > 0) return find(together(clouds, zones, weighed));
    const { liquid, track } = sure(clouds[only]);
    const { value, atMin } = (known[only] ??= find(track));
    return { value: value * weighed(liquid), atMin };
  };
  return {
    highest: (weight, times = ONE) => {
      const worst = uncapped(weight, times);
      return { ...worst, value: Math.min(worst.value, mostOf(clouds, weight)) };
    },
    timesUntil: (level, liquid, weight, times) => {
      const cloud = sure(clouds.find((each) => each.liquid === liquid));
      if (mostOf(clouds, weight) <= level) return undefined;
      return steppedUntil(level, (own) => {
        const worst = uncapped(weight, (each) => (each === liquid ? own : times(each)));
        return { ...worst, per: levelAt(cloud.track, worst.atMin) * weight(liquid) };
      });
    },
  };
};

/**
 * No more than the air can hold of each. Exact for one liquid; of several, each might reach its own
 * most at another time, so this is the upper bound.
 */
const mostOf = (clouds: readonly InAir[], weight: OfLiquid): number =>
  clouds.reduce((sum, { liquid }) => {
    const each = weight(liquid);
    return sum + (each === 0 ? 0 : each * liquid.vapour.mostMgM3);
  }, 0);

const MOST_STEPS = 60;
const CLOSE = 1e-13;
const LEAP = 4;

/**
 * Where a highest gets to a level, as more of one thing is there. The highest of straight lines bends
 * upwards only, so each step along the line of the worst moment falls short of nothing (Newton).
 * `per` is what one time of it gives at that moment.
 */
const steppedUntil = (
  level: number,
  at: (times: number) => Worst & { readonly per: number },
): number | undefined => {
  let times = 1;
  for (let step = 0; step < MOST_STEPS; step += 1) {
    const { value, per } = at(times);
    if (per <= 0) {
      // It is not there at the worst moment: the others are over by themselves, or it takes more.
      if (value >= level) return 0;
      times *= LEAP;
      continue;
    }
    const next = times + (level - value) / per;
    if (next <= 0) return 0;
    if (Math.abs(next - times) <= CLOSE * next) return next;
    times = next;
  }
  return times;
};
