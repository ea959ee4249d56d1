import type { AirRoom } from '../types.js';
import { sure } from '../book/sure.js';
import type { AirBook } from './airBook.js';
import { type Day, type Setting, makeDay } from './day.js';
import { type Burden, burdensOf, reachedOf } from './levels.js';
import type { Liquid } from './liquids.js';
import type { OfLiquid } from './measure.js';
import { zonesOf } from './room.js';
import { comesDownTo } from './roots.js';

/** How much of one liquid the air takes. */
export interface MostMl {
  readonly liquid: Liquid;
  /** What its uses come to as they were said. */
  readonly saidMl: number;
  /** Undefined: the air never holds too much of it, however much there is. */
  readonly ml: number | undefined;
}

/**
 * Most millilitres of each liquid over all its uses, timed as they are and with the others as they
 * are, so that no limit is passed: the model run backwards.
 */
export const mostMlOf = (book: AirBook, said: Day, setting: Setting): readonly MostMl[] => {
  const liquids = said.clouds.map(({ liquid }) => liquid);
  // Uses that were said without an amount still say when: a millilitre each shows how much.
  const shown = liquids.map((liquid) =>
    saidMl(liquid) > 0
      ? liquid
      : { ...liquid, uses: liquid.uses.map((use) => ({ ...use, ml: 1 })) },
  );
  const isSaid = (each: Liquid): number => Number(liquids.includes(each));
  const day = shown.every(isSaid) ? said : makeDay(book, shown, setting);
  const burdens = tightestFirst(book, day);
  return liquids.map((liquid, place) => {
    const own = sure(shown[place]);
    let times = Infinity;
    for (const { of, weight, most } of burdens) {
      const found = times;
      const withFound: OfLiquid = (each) => (each === own ? found : isSaid(each));
      if (found < Infinity && day[of].highest(weight, withFound).value <= most) continue;
      times = Math.min(found, day[of].timesUntil(most, own, weight, isSaid) ?? Infinity);
    }
    const ml = times < Infinity ? times * saidMl(own) : undefined;
    return { liquid, saidMl: saidMl(liquid), ml };
  });
};

/** All that limits a day, what is nearest to its most before the others. */
const tightestFirst = (book: AirBook, day: Day): readonly Burden[] =>
  burdensOf(book.figures)
    .map((burden) => ({ burden, reached: reachedOf(day, burden) }))
    .sort((a, b) => b.reached - a.reached)
    .map(({ burden }) => burden);

const saidMl = ({ uses }: Liquid): number => uses.reduce((sum, { ml }) => sum + ml, 0);

/** More than any fan of a workshop moves. */
const MOST_M3_PER_HOUR = 1e6;

/**
 * Smallest flow of air through the room, m3/h, at which no limit is passed: the model run backwards.
 * Undefined: none is enough, as the air at the bench itself holds too much.
 */
export const fanNeededOf = (
  book: AirBook,
  liquids: readonly Liquid[],
  room: AirRoom,
): number | undefined => {
  const dayAt = (airM3PerHour: number): Day =>
    makeDay(book, liquids, {
      zones: zonesOf({ ...room, airM3PerHour }),
      captured: room.captured,
      drying: 1,
    });
  const now = room.airM3PerHour || room.volumeM3;
  let needed: number | undefined = 0;
  // Each limit has a flow of its own; the largest keeps them all.
  for (const burden of tightestFirst(book, dayAt(now))) {
    if (needed > 0 && reachedOf(dayAt(needed), burden) <= 1) continue;
    const own = comesDownTo((flow) => reachedOf(dayAt(flow), burden), 1, now, MOST_M3_PER_HOUR);
    if (own === undefined) return undefined;
    needed = Math.max(needed, own);
  }
  return needed;
};
