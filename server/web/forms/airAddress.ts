import type { AirInput, AirUse } from '../../reasoning/index.js';
import {
  halves,
  list,
  numberText,
  one,
  roomPairs,
  saidIn,
  type Said,
  typedRoomIn,
  writtenQuery,
} from './addressParts.js';
import {
  AIR_ROOM_FIELDS,
  AIR_USE_FIELDS,
  type AirForm,
  type AirUseText,
  type TypedAirUse,
} from './airForm.js';
import { canonicalAir } from './canonicalAir.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST } from './limits.js';
import type { Problem } from './problem.js';
import { readAir, SUBSTANCE, type AirReading } from './readAir.js';

/**
 * The room and the uses that a query of /air holds (text after "?", still encoded), or what is wrong
 * with it. Its form is sent as a query too, by the names of its fields, and read here.
 *
 * @example parseAirAddress('room=60&air=window&use=white-spirit:40@10+15~lid', known)
 */
export function parseAirAddress(rawQuery: string, known: KnownIds): AirReading {
  if (rawQuery.length > MOST.addressLetters) return { problems: [tooLong(rawQuery.length)] };
  const reading = readAir(airFormOf(rawQuery), known);
  if (!reading.input) return reading;
  const { length } = canonicalAirAddress(reading.input);
  return length <= MOST.addressLetters ? reading : { problems: [tooLong(length)] };
}

const tooLong = (letters: number): Problem => ({
  path: '',
  field: '',
  got: `${letters.toLocaleString('en-GB')} letters`,
  accepts: ACCEPTS.airAddress,
});

/** All that a query of /air says, as typed, for showing back: uses of the address, then of the form. */
export function airFormOf(rawQuery: string): AirForm {
  const { has, last, list: several } = saidIn(rawQuery);
  const typed = Object.entries(AIR_ROOM_FIELDS)
    .filter(([, field]) => has(field))
    .map(([name, field]) => [name, last(field)] as const);
  return {
    region: last('in'),
    room: { ...typedRoomIn(last), ...Object.fromEntries(typed) },
    zones: last('zones'),
    shift: last('shift'),
    uses: [...several('use').map(typedUseOf), ...typedRows(last)],
  };
}

/** white-spirit:40@10+15/50~lid: 40 ml at minute 10, over 15 minutes, half of it, under a lid. */
function typedUseOf(text: string): TypedAirUse {
  const [what, rest] = halves(text, ':');
  const [open, lid] = halves(rest, '~');
  const [timed, evaporates] = halves(open, '/');
  // A plus sign of a query stands for a space.
  const [before, minutes] = halves(timed.trim().replace('+', ' '), ' ');
  const [ml, startMin] = halves(before, '@');
  return { what, ml, startMin, minutes, evaporates, lidded: lid.trim() === 'lid' };
}

/** Rows of the form that something was typed in: one more than is accepted, to be told so. */
function typedRows(last: Said['last']): readonly TypedAirUse[] {
  const texts = Object.keys(AIR_USE_FIELDS) as readonly AirUseText[];
  return Array.from({ length: MOST.airUses + 1 }, (_, row): TypedAirUse => {
    const typed = (name: AirUseText): string => last(`${AIR_USE_FIELDS[name]}${row}`);
    return {
      what: typed('what'),
      ml: typed('ml'),
      startMin: typed('startMin'),
      minutes: typed('minutes'),
      evaporates: typed('evaporates'),
      lidded: last(`lid${row}`) !== '',
    };
  }).filter((use) => texts.some((name) => use[name].trim() !== ''));
}

/**
 * The one address of a room and its uses: what to write after "?" of /air.
 *
 * @example canonicalAirAddress({ room: { volumeM3: 60 }, uses: [{ agent: 'white-spirit', ml: 40 }] })
 * // 'room=60&use=white-spirit:40'
 */
export function canonicalAirAddress(input: AirInput): string {
  const { region, room, uses, zones, shiftHours } = canonicalAir(input);
  return writtenQuery([
    ...one('in', region),
    ...roomPairs(room),
    ...list('use', uses.map(useText)),
    ...one('zones', zones),
    ...one('shift', shiftHours),
  ]);
}

const useText = ({ agent, substance, ml, startMin, minutes, evaporates, lidded }: AirUse): string =>
  [
    substance === undefined ? agent : `${SUBSTANCE}${substance}`,
    `:${numberText(ml)}`,
    startMin === undefined ? '' : `@${numberText(startMin)}`,
    minutes === undefined ? '' : ` ${numberText(minutes)}`,
    evaporates === undefined ? '' : `/${numberText(evaporates * 100)}`,
    lidded === true ? '~lid' : '',
  ].join('');
