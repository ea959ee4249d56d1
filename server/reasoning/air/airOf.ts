import type { AirAnswer, AirInput } from '../types.js';
import { sure } from '../book/sure.js';
import type { AirBook } from './airBook.js';
import { roomCautions } from './cautions.js';
import { type Day, type Setting, endOf, makeDay } from './day.js';
import { LONG_TERM, levelsOf } from './levels.js';
import { liquidsOf } from './liquids.js';
import { type MostMl, fanNeededOf, mostMlOf } from './most.js';
import { BEST, type End, WORST, rangesOf } from './ranges.js';
import { COUNTED, type Ends, roomOf, zonesOf } from './room.js';
import { seriesOf } from './series.js';
import { sharesOf } from './shares.js';

/** Region whose row stands for everywhere that has no row of its own. */
const ELSEWHERE = 'other';

/**
 * What is in the air of a room at which time, how that stands to the published limits, how long the
 * room must air, and the same run backwards: how much it takes, and what fan it would need.
 *
 * An estimate. Model: two well-mixed zones (M. Nicas, 1996), solved exactly; see docs/air-model.md.
 */
export const airOf = (book: AirBook, input: AirInput): AirAnswer => {
  const asked = askedOf(book, input);
  const { zones, region, room, liquids, said, endMin, settingOf, airOut } = asked;
  const factor = book.figures['evaporation-factor'];
  const dayAt = (ends: Ends, drying: number): Day =>
    makeDay(book, liquids, settingOf(ends, drying));
  const endAt = (ends: Ends): End => ({
    quick: dayAt(ends, factor),
    slow: dayAt(ends, 1 / factor),
  });
  const day = dayAt(COUNTED, 1);
  const worst = endAt(WORST);
  const levels = levelsOf(day);
  const airOutMin = airOut(day);
  const { horizonMin, series } = seriesOf(book, input, day, {
    ...{ endMin, airOutMin },
    peakAtMin: levels.peakAtMin,
  });
  const fan = fanNeededOf(book, liquids, room);
  const ranges = rangesOf({ levels, airOutMin }, worst, endAt(BEST), airOut);
  return {
    region: region.id,
    room,
    ...{ zones, horizonMin, endMin, series },
    ...levels,
    shares: sharesOf(day),
    ...(airOutMin === undefined ? {} : { airOutMin }),
    mostMl: mostOf(
      mostMlOf(book, day, settingOf(COUNTED, 1)),
      mostMlOf(book, worst.quick, settingOf(WORST, factor)),
    ),
    ...(fan === undefined ? {} : { fanNeededM3PerHour: fan }),
    ranges,
    cautions: roomCautions(book, input, said, {
      ...{ day, levels, airOutMin, fan, horizonMin },
      worstShare: sure(ranges.combinedShare.high),
    }),
  };
};

/** How long the room must air, alone: minutes from the end of the last use; undefined: never. */
export const airOutOf = (book: AirBook, input: AirInput): number | undefined => {
  const { liquids, settingOf, airOut } = askedOf(book, input);
  return airOut(makeDay(book, liquids, settingOf(COUNTED, 1)));
};

/** What was asked, resolved against the tables. */
const askedOf = (book: AirBook, input: AirInput) => {
  const region = sure(book.regions.get(input.region ?? ELSEWHERE) ?? book.regions.get(ELSEWHERE));
  const zones = input.zones ?? 2;
  const room = roomOf(book, input.room, COUNTED, zones);
  const endMin = Math.max(0, ...input.uses.map((use) => endOf(use, book.figures)));
  const settingOf = (ends: Ends, drying: number): Setting => {
    const at = roomOf(book, input.room, ends, zones);
    return { zones: zonesOf(at), captured: at.captured, drying };
  };
  const airOut = (of: Day): number | undefined => {
    const clear = of.belowFrom(LONG_TERM, book.figures['target-share'], endMin);
    return clear === undefined ? undefined : clear - endMin;
  };
  const found = liquidsOf(book, input, region, room.temperatureC);
  return { ...found, zones, region, room, endMin, settingOf, airOut };
};

/** Most of each liquid as counted, beside the same at the worst end of what was guessed. */
const mostOf = (counted: readonly MostMl[], careful: readonly MostMl[]): AirAnswer['mostMl'] =>
  counted.map(({ liquid, saidMl, ml }, place) => {
    const agent = liquid.agent ?? liquid.unknown;
    const carefulMl = careful[place]?.ml;
    return {
      ...(agent === undefined ? {} : { agent }),
      substance: liquid.substance.id,
      saidMl,
      ...(ml === undefined ? {} : { ml }),
      ...(carefulMl === undefined ? {} : { carefulMl }),
    };
  });
