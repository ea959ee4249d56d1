import type { AirUse } from '../types.js';
import type { AirBook } from './airBook.js';
import type { Liquid } from './liquids.js';
import {
  type InAir,
  type Measure,
  type OfLiquid,
  makeMean,
  makePeak,
  together,
} from './measure.js';
import { type Source, makeTrack } from './track.js';
import type { AirFigures, Vapour } from './vapour.js';
import { type Paces, belowFrom } from './worst.js';
import type { Zones } from './zones.js';

/** A room's air, and how it is counted in this run of the model. */
export interface Setting {
  readonly zones: Zones;
  /** Share of the vapour that is caught where it arises. */
  readonly captured: number;
  /** Times as quick (above 1) or as slow as counted that liquids dry. */
  readonly drying: number;
}

/** A day's uses in a setting, solved: asked for whatever is highest at the bench. */
export interface Day {
  readonly clouds: readonly InAir[];
  readonly peak: Measure;
  /** Means over a quarter of an hour, and over a working day. */
  readonly short: Measure;
  readonly long: Measure;
  /** From when on all liquids together, weighed, stay below a level; undefined: never. */
  readonly belowFrom: (weight: OfLiquid, level: number, fromMin: number) => number | undefined;
}

const MINUTES_IN_HOUR = 60;
/** No film dries quicker than in a second. */
const QUICKEST_FADE = 60;

/** When a use ends; one that nobody timed is over after the usual time. */
export const endOf = (use: AirUse, figures: AirFigures): number =>
  (use.startMin ?? 0) + (use.minutes ?? figures['use-minutes']);

/** Solves a day. Nothing is searched before it is asked for. */
export const makeDay = (book: AirBook, liquids: readonly Liquid[], setting: Setting): Day => {
  const { figures } = book;
  const { zones } = setting;
  const clouds = liquids.map((liquid) => {
    const sources = liquid.uses.flatMap((use) => sourceOf(use, liquid.vapour, setting, figures));
    return { liquid, sources, track: makeTrack(zones, sources) };
  });
  const paces = pacesOf(liquids, setting);
  const meanOver = (minutes: number): Measure => makeMean(clouds, { zones, paces }, minutes);
  return {
    clouds,
    peak: makePeak(clouds, { zones, paces }),
    short: meanOver(figures['short-term-min']),
    long: meanOver(figures['shift-hours'] * MINUTES_IN_HOUR),
    belowFrom: (weight, level, fromMin) =>
      belowFrom(together(clouds, zones, weight), paces, level, fromMin),
  };
};

const pacesOf = (liquids: readonly Liquid[], setting: Setting): Paces => {
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
