import { z } from 'zod';
import type { Bottle } from '../../reasoning/index.js';
import { ACCEPTS, COLDEST_C, HOTTEST_C, MOST, NUMBERS, type NumberName } from './limits.js';
import { listOf, numberOf, objectOf, wordsOf } from './schema.js';

/** Parts of JSON bodies that a bench and the air of a room share. */

/** A number in the bounds of that name. */
export const number = (name: NumberName) =>
  z
    .number(ACCEPTS[name])
    .min(NUMBERS[name].low, ACCEPTS[name])
    .max(NUMBERS[name].high, ACCEPTS[name]);

/** An id of a table, or any name: then it is unknown. */
export const id = (what: string) => wordsOf(what, MOST.letters);

/** Words that may be left empty. */
export const text = () => z.string(ACCEPTS.name).max(MOST.letters, ACCEPTS.name);

/** A room and its air. */
export const RoomBody = objectOf(
  {
    volumeM3: number('volumeM3').optional(),
    lengthM: number('lengthM').optional(),
    widthM: number('widthM').optional(),
    heightM: number('heightM').optional(),
    air: id(ACCEPTS.name).optional(),
    airChangesPerHour: number('airChangesPerHour').optional(),
    fanM3PerHour: number('fanM3PerHour').optional(),
    mixingFactor: number('mixingFactor').optional(),
    temperatureC: number('temperatureC').optional(),
  },
  'a room: { "volumeM3": ..., "air": ... }',
);

const CODE = 'a hazard code such as H226';

/** What the data sheet of a studio's own bottle says. */
export const BottleBody = objectOf(
  {
    agent: id(ACCEPTS.name),
    name: text().optional(),
    sdsDate: z.iso.date('a date such as 2026-03-01'),
    flashPointC: numberOf('degrees Celsius', COLDEST_C, HOTTEST_C).optional(),
    boilingPointC: numberOf('degrees Celsius', COLDEST_C, HOTTEST_C).optional(),
    vapourPressurePa: numberOf('pascals', 0, 10_000_000).optional(),
    limitMgM3: numberOf('milligrams in a cubic metre', 0.000001, 1_000_000).optional(),
    hazardCodes: listOf(wordsOf(CODE, MOST.letters), MOST.hazardCodes, 'hazard codes').optional(),
  },
  'a bottle: { "agent": ..., "sdsDate": ... }',
) satisfies z.ZodType<Bottle>;
