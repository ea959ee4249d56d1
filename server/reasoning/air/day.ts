import type { AirUse } from '../types.js';
import { sure } from '../book/sure.js';
import type { AirBook } from './airBook.js';
import type { Liquid } from './liquids.js';
import { type Source, type Track, makeTrack } from './track.js';
import type { AirFigures, Vapour } from './vapour.js';
import { type Signal, type Worst, belowFrom, peakOf, worstMeanOf } from './worst.js';
import type { Zones } from './zones.js';

/** A room's air, and how it is counted in this run of the model. */
export interface Setting {
  readonly zones: Zones;
  /** Share of the vapour that is caught where it arises. */
  readonly captured: number;
  /** Times as quick (above 1) or as slow as counted that liquids dry. */
  readonly drying: number;
}

/** A figure for each liquid. */
export type OfLiquid = (liquid: Liquid) => number;

/**
 * A day's uses in a setting, solved: asked for whatever is highest at the bench. `weight` is what a
 * milligram of a liquid counts for (1, or its share of some limit), `times` how many times as much
 * of it there were; absent: once.
 */
export interface Day {
  readonly clouds: readonly { readonly liquid: Liquid; readonly track: Track }[];
  readonly peak: (weight: OfLiquid, times?: OfLiquid) => Worst;
  /** Highest mean over a quarter of an hour, and over a working day. */
  readonly short: (weight: OfLiquid, times?: OfLiquid) => number;
  readonly long: (weight: OfLiquid, times?: OfLiquid) => number;
  /** From when on all liquids together stay below a level. */
  readonly belowFrom: (weight: OfLiquid, level: number, fromMin: number) => number | undefined;
}

const MINUTES_IN_HOUR = 60;
/** No film dries quicker than in a second. */
const QUICKEST_FADE = 60;

/** When a use ends; one that nobody timed is over after the usual time. */
export const endOf = (use: AirUse, figures: AirFigures): number =>
  (use.startMin ?? 0) + (use.minutes ?? figures['use-minutes']);

/** Solves a day. Nothing is searched before it is asked for, and for one liquid only once. */
export const makeDay = (book: AirBook, liquids: readonly Liquid[], setting: Setting): Day => {
  const { figures } = book;
  const clouds = liquids.map((liquid) => ({
    liquid,
    track: makeTrack(
      setting.zones,
      liquid.uses.flatMap((use) => sourceOf(use, liquid.vapour, setting, figures)),
    ),
  }));
  const paces = pacesOf(liquids, setting);
  const signal = (weight: OfLiquid): Signal => ({
    ...paces,
    parts: clouds.map(({ liquid, track }) => ({ track, weight: weight(liquid) })),
  });
  const [first, ...others] = clouds;
  // Alone in the air, all else follows from the milligrams.
  const alone = others.length === 0 ? first?.liquid : undefined;
  const search = (find: (weight: OfLiquid) => Worst): Day['peak'] => {
    let found: Worst | undefined;
    const uncapped = (weight: OfLiquid): Worst => {
      if (alone === undefined) return find(weight);
      found ??= find(ONE);
      return { ...found, value: found.value * weight(alone) };
    };
    return (weight, times = ONE) => {
      const worst = uncapped((liquid) => weight(liquid) * times(liquid));
      return { ...worst, value: Math.min(worst.value, mostOf(liquids, weight)) };
    };
  };
  const peaks = clouds.map(({ track }) =>
    once(() => peakOf({ ...paces, parts: [{ track, weight: 1 }] })),
  );
  const peak = search((weight) =>
    alone === undefined ? peakOf(signal(weight)) : sure(peaks[0])(),
  );
  // Together they never stand higher than their own peaks added up.
  const highest = (weight: OfLiquid): number =>
    liquids.reduce((sum, liquid, place) => sum + weight(liquid) * sure(peaks[place])().value, 0);
  const meanOver = (minutes: number): Day['long'] => {
    const mean = search((weight) => worstMeanOf(signal(weight), minutes, highest(weight)));
    return (weight, times) => mean(weight, times).value;
  };
  return {
    clouds,
    peak,
    short: meanOver(figures['short-term-min']),
    long: meanOver(figures['shift-hours'] * MINUTES_IN_HOUR),
    belowFrom: (weight, level, fromMin) => belowFrom(signal(weight), level, fromMin),
  };
};

/** Works something out when it is first asked for, and then knows it. */
const once = <T>(make: () => T): (() => T) => {
  let known: { readonly value: T } | undefined;
  return () => (known ??= { value: make() }).value;
};

export const ONE: OfLiquid = () => 1;

/**
 * No more than the air can hold of each. Exact for one liquid; of several, each might reach its own
 * most at another time, so this is the upper bound.
 */
const mostOf = (liquids: readonly Liquid[], weight: OfLiquid): number =>
  liquids.reduce((sum, liquid) => {
    const each = weight(liquid);
    return sum + (each === 0 ? 0 : each * liquid.vapour.mostMgM3);
  }, 0);

const pacesOf = (
  liquids: readonly Liquid[],
  setting: Setting,
): Pick<Signal, 'quickest' | 'slowest'> => {
  const paces = [
    ...setting.zones.modes.map(({ rate }) => -rate),
    ...liquids.map(({ vapour }) => fadeOf(vapour, setting.drying)),
  ].filter((pace) => pace > 0);
  return { quickest: Math.max(...paces), slowest: Math.min(...paces) };
};

/**
 * The vapour of one use. Timed: evenly over its minutes; under a lid, only what dries meanwhile.
 * Not timed: a wiped film that dies away, cut off by a lid at the end of the use.
 */
const sourceOf = (
  { ml, startMin = 0, minutes, evaporates = 1, lidded = false }: AirUse,
  vapour: Vapour,
  { captured, drying }: Setting,
  figures: AirFigures,
): readonly Source[] => {
  const mg = ml * vapour.mgMl * evaporates * (1 - captured);
  const fade = fadeOf(vapour, drying);
  if (minutes !== undefined) {
    const share = lidded ? driedShare(fade * minutes) : 1;
    const mgMin = (mg * share) / minutes;
    return [{ fromMin: startMin, toMin: startMin + minutes, mgMin, fadePerMin: 0 }];
  }
  const toMin = lidded ? startMin + figures['use-minutes'] : Infinity;
  return [{ fromMin: startMin, toMin, mgMin: mg * fade, fadePerMin: fade }];
};

const fadeOf = ({ fadePerMin }: Vapour, drying: number): number =>
  Math.min(QUICKEST_FADE, fadePerMin * drying);

/** Share of a liquid, put out evenly, that has dried by the end: `1 - (1 - e^-x) / x`. */
const driedShare = (fades: number): number => 1 + Math.expm1(-fades) / fades;
