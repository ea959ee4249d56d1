import type { BenchInput, MixInput, Room } from '../../reasoning/index.js';
import { canonicalBench } from './canonicalBench.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST } from './limits.js';
import { roundNumber } from './number.js';
import type { Problem } from './problem.js';
import { readBench, type Reading } from './readBench.js';
import { NO_ROOM, type TypedBench, type TypedMix, type TypedRoom } from './typedBench.js';

/** Key and value of each part of a query, decoded, in order. */
type Query = readonly (readonly [string, string])[];

/**
 * The bench that a query holds (text after "?", still encoded), or what is
 * wrong with it.
 *
 * @example parseAddress('mix=oil-relief:100&on=glass-slab', known)
 */
export function parseAddress(rawQuery: string, known: KnownIds): Reading {
  if (rawQuery.length > MOST.addressLetters) return { problems: [tooLong(rawQuery.length)] };
  return thatFits(readBench(typedOfAddress(rawQuery), known));
}

/** The reading, unless the one address of its bench would be too long to be read again. */
export function thatFits(reading: Reading): Reading {
  if (!reading.bench) return reading;
  const { length } = canonicalAddress(reading.bench);
  return length <= MOST.addressLetters ? reading : { problems: [tooLong(length)] };
}

const tooLong = (letters: number): Problem => ({
  path: '',
  field: '',
  got: `${letters.toLocaleString('en-GB')} letters`,
  accepts: ACCEPTS.address,
});

/** What a query says, unchecked; of things that can be said once, the last counts. */
export function typedOfAddress(rawQuery: string): TypedBench {
  const said = new Map<string, string[]>();
  for (const [key, value] of new URLSearchParams(rawQuery)) {
    const before = said.get(key);
    if (before) before.push(value);
    else said.set(key, [value]);
  }
  const all = (key: string): readonly string[] => said.get(key) ?? [];
  const last = (key: string) => all(key).at(-1) ?? '';
  const list = (key: string) => all(key).flatMap((value) => pieces(value, ','));
  return {
    region: last('in'),
    mixes: all('mix').map(typedMixOf),
    surfaces: list('on'),
    equipment: list('near'),
    ...(said.has('hand') && { agentsAtHand: list('hand') }),
    uses: list('use').map((use) => {
      const [agent, ml] = halves(use, ':');
      return { agent, ml };
    }),
    room: {
      ...NO_ROOM,
      ...typedSizeOf(last('room')),
      air: last('air'),
      airChangesPerHour: last('ach'),
      fanM3PerHour: last('fan'),
      mixingFactor: last('mixing'),
      temperatureC: last('temp'),
    },
    people: { count: last('people'), under16: last('under16'), flags: list('who') },
  };
}

/** name@ink:share,ink:share/additive:percent,additive~dried;surface,surface */
function typedMixOf(text: string): TypedMix {
  const at = text.indexOf('@');
  const [stuff, on] = halves(text.slice(at + 1), ';');
  const [contents, state] = halves(stuff, '~');
  const [parts, additives] = halves(contents, '/');
  return {
    name: at < 0 ? '' : text.slice(0, at),
    parts: pieces(parts, ',').map((part) => {
      const [ink, share] = halves(part, ':');
      return { ink, share };
    }),
    additives: pieces(additives, ',').map((one) => {
      const [additive, percent] = halves(one, ':');
      return { additive, percent };
    }),
    dried: state.trim() !== '',
    ...(on !== '' && { on: pieces(on, ',') }),
  };
}

/** "60" is a volume, "5x4x3" three sides. */
function typedSizeOf(text: string): Partial<TypedRoom> {
  const [lengthM = '', widthM, heightM = '', ...more] = text.split('x');
  if (widthM === undefined) return { volumeM3: text };
  if (more.length > 0) return { lengthM: text };
  return { lengthM, widthM, heightM };
}

const pieces = (text: string, mark: string): string[] =>
  text.split(mark).filter((piece) => piece.trim() !== '');

/** What stands before and after the first mark; all of it before when there is none. */
function halves(text: string, mark: string): [string, string] {
  const at = text.indexOf(mark);
  return at < 0 ? [text, ''] : [text.slice(0, at), text.slice(at + mark.length)];
}

/**
 * The one address of a bench: what to write after "?" of /sheet and of /. The
 * same bench, in whatever order it was given, has the same one.
 *
 * @example benchToAddress({ mixes: [{ parts: [{ ink: 'oil-relief' }] }], surfaces: ['glass-slab'] })
 * // 'mix=oil-relief&on=glass-slab'
 */
export const benchToAddress = (bench: BenchInput): string =>
  canonicalAddress(canonicalBench(bench));

/** The address of a bench that was just read from an address or a form: those are canonical. */
export function canonicalAddress(bench: BenchInput): string {
  const room: Room = bench.room ?? {};
  const pairs: Query = [
    ...one('in', bench.region),
    ...bench.mixes.map((mix) => ['mix', mixText(mix)] as const),
    ...list('on', bench.surfaces),
    ...list('near', bench.equipment),
    ...(bench.agentsAtHand ? [['hand', bench.agentsAtHand.join(',')] as const] : []),
    ...list(
      'use',
      bench.uses?.map((use) => `${use.agent}:${numberText(use.ml)}`),
    ),
    ...one('room', sizeText(room)),
    ...one('air', room.air),
    ...one('ach', room.airChangesPerHour),
    ...one('fan', room.fanM3PerHour),
    ...one('mixing', room.mixingFactor),
    ...one('temp', room.temperatureC),
    ...one('people', bench.people?.count),
    ...(bench.people?.under16 === true ? [['under16', 'yes'] as const] : []),
    ...list('who', bench.people?.flags),
  ];
  return pairs.map(([key, value]) => `${key}=${encode(value)}`).join('&');
}

function one(key: string, value: string | number | undefined): Query {
  if (value === undefined || value === '') return [];
  return [[key, typeof value === 'number' ? numberText(value) : value]];
}

const list = (key: string, values: readonly string[] = []): Query =>
  values.length > 0 ? [[key, values.join(',')]] : [];

const numberText = (value: number): string => String(roundNumber(value));

const amount = (id: string, much: number | undefined): string =>
  much === undefined ? id : `${id}:${numberText(much)}`;

function mixText(mix: MixInput): string {
  const parts = mix.parts.map((part) => amount(part.ink, part.share)).join(',');
  const additives = (mix.additives ?? []).map((one) => amount(one.additive, one.percent)).join(',');
  return [
    mix.name === undefined ? '' : `${mix.name}@`,
    parts,
    additives === '' ? '' : `/${additives}`,
    mix.dried === true ? '~dried' : '',
    mix.on && mix.on.length > 0 ? `;${mix.on.join(',')}` : '',
  ].join('');
}

function sizeText(room: Room): string {
  const sides = [room.lengthM, room.widthM, room.heightM];
  if (sides.some((side) => side !== undefined)) {
    return sides.map((side) => (side === undefined ? '' : numberText(side))).join('x');
  }
  return room.volumeM3 === undefined ? '' : numberText(room.volumeM3);
}

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
