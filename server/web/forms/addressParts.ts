import type { Room } from '../../reasoning/index.js';
import { roundNumber } from './number.js';
import { NO_ROOM, type TypedRoom } from './typedBench.js';

/** Parts of addresses that hold all that was said: what is read and written the same everywhere. */

/** Key and value of each part of a query, decoded, in order. */
export type Query = readonly (readonly [string, string])[];

/** What a query (text after "?", still encoded) says, by key. */
export interface Said {
  readonly has: (key: string) => boolean;
  readonly all: (key: string) => readonly string[];
  /** Of things that can be said once, the last counts. */
  readonly last: (key: string) => string;
  /** Values that stand between commas. */
  readonly list: (key: string) => readonly string[];
}

/** Takes a query apart. */
export function saidIn(rawQuery: string): Said {
  const said = new Map<string, string[]>();
  for (const [key, value] of new URLSearchParams(rawQuery)) {
    const before = said.get(key);
    if (before) before.push(value);
    else said.set(key, [value]);
  }
  const all = (key: string): readonly string[] => said.get(key) ?? [];
  return {
    has: (key) => said.has(key),
    all,
    last: (key) => all(key).at(-1) ?? '',
    list: (key) => all(key).flatMap((value) => pieces(value, ',')),
  };
}

/** The room of an address, as it would have been typed. */
export const typedRoomIn = (last: Said['last']): TypedRoom => ({
  ...NO_ROOM,
  ...typedSizeOf(last('room')),
  air: last('air'),
  airChangesPerHour: last('ach'),
  fanM3PerHour: last('fan'),
  mixingFactor: last('mixing'),
  temperatureC: last('temp'),
});

/** "60" is a volume, "5x4x3" three sides. */
function typedSizeOf(text: string): Partial<TypedRoom> {
  const [lengthM = '', widthM, heightM = '', ...more] = text.split('x');
  if (widthM === undefined) return { volumeM3: text };
  if (more.length > 0) return { lengthM: text };
  return { lengthM, widthM, heightM };
}

/** The pieces between marks, without the empty ones. */
export const pieces = (text: string, mark: string): string[] =>
  text.split(mark).filter((piece) => piece.trim() !== '');

/** What stands before and after the first mark; all of it before when there is none. */
export function halves(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + mark.length)];
}

/** A room in an address. */
export const roomPairs = (room: Room = {}): Query => [
  ...one('room', sizeText(room)),
  ...one('air', room.air),
  ...one('ach', room.airChangesPerHour),
  ...one('fan', room.fanM3PerHour),
  ...one('mixing', room.mixingFactor),
  ...one('temp', room.temperatureC),
];

/** A thing that is said once; nothing when it is not there. */
export function one(key: string, value: string | number | undefined): Query {
  if (value === undefined || value === '') return [];
  return [[key, typeof value === 'number' ? numberText(value) : value]];
}

/** Several things under one key. */
export const list = (key: string, values: readonly string[] = []): Query =>
  values.length > 0 ? [[key, values.join(',')]] : [];

/** A number as an address writes it. */
export const numberText = (value: number): string => String(roundNumber(value));

function sizeText(room: Room): string {
  const sides = [room.lengthM, room.widthM, room.heightM];
  if (sides.some((side) => side !== undefined)) {
    return sides.map((side) => (side === undefined ? '' : numberText(side))).join('x');
  }
  return room.volumeM3 === undefined ? '' : numberText(room.volumeM3);
}

/** The text after "?". */
export const writtenQuery = (pairs: Query): string =>
  pairs.map(([key, value]) => `${key}=${encode(value)}`).join('&');

/** Letters that a query may hold as they are and that keep the address readable (RFC 3986, 3.4). */
const READABLE = /%(?:2C|3A|2F|3B|40|7E)/g;

/** What most values are: nothing to encode. */
const PLAIN = /^[\w.,:/;@~-]*$/;

const encode = (text: string): string =>
  PLAIN.test(text)
    ? text
    : encodeURIComponent(text)
        .replace(READABLE, (escaped) => decodeURIComponent(escaped))
        .replaceAll('%20', '+');
