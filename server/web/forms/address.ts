import type { BenchInput, MixInput } from '../../reasoning/index.js';
import {
  halves,
  list,
  numberText,
  one,
  pieces,
  roomPairs,
  saidIn,
  typedRoomIn,
  writtenQuery,
} from './addressParts.js';
import { canonicalBench } from './canonicalBench.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST } from './limits.js';
import type { Problem } from './problem.js';
import { readBench, type Reading } from './readBench.js';
import type { TypedBench, TypedMix } from './typedBench.js';

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
  const { has, all, last, list } = saidIn(rawQuery);
  return {
    region: last('in'),
    mixes: all('mix').map(typedMixOf),
    surfaces: list('on'),
    equipment: list('near'),
    ...(has('hand') && { agentsAtHand: list('hand') }),
    uses: list('use').map((use) => {
      const [agent, ml] = halves(use, ':');
      return { agent, ml };
    }),
    room: typedRoomIn(last),
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
  return writtenQuery([
    ...one('in', bench.region),
    ...bench.mixes.map((mix) => ['mix', mixText(mix)] as const),
    ...list('on', bench.surfaces),
    ...list('near', bench.equipment),
    ...(bench.agentsAtHand ? [['hand', bench.agentsAtHand.join(',')] as const] : []),
    ...list(
      'use',
      bench.uses?.map((use) => `${use.agent}:${numberText(use.ml)}`),
    ),
    ...roomPairs(bench.room),
    ...one('people', bench.people?.count),
    ...(bench.people?.under16 === true ? [['under16', 'yes'] as const] : []),
    ...list('who', bench.people?.flags),
  ]);
}

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
