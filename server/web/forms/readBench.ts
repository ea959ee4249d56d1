import type { BenchInput, MixInput, PeopleInput } from '../../reasoning/index.js';
import { canonicalBench, mergedAdditives, mergedParts } from './canonicalBench.js';
import type { KnownIds } from './known.js';
import { ACCEPTS, MOST, SHARE_SLACK } from './limits.js';
import { readNumber } from './number.js';
import { PROBLEMS_TOLD, type Problem } from './problem.js';
import { number, optional, readRegion, readRoom, taking, type Tell } from './readParts.js';
import { cleanText } from './text.js';
import { ROOM_FIELDS, type TypedBench, type TypedMix } from './typedBench.js';

export type Reading =
  | { readonly bench: BenchInput; readonly problems?: never }
  | { readonly problems: readonly Problem[]; readonly bench?: never };

type Additives = NonNullable<MixInput['additives']>;

/**
 * The bench that was typed, or all that is wrong with it. Form, address and
 * JSON body are checked here and nowhere else. Lists come out sorted and
 * without repeats, so that equal benches have one address.
 */
export function readBench(typed: TypedBench, known: KnownIds): Reading {
  const problems: Problem[] = [];
  const tell = taking(problems);
  const region = readRegion(typed.region, 'region', known, tell);
  const equipment = readIds(typed.equipment, 'equipment', 'equipment', tell);
  const uses = readUses(typed, tell);
  const room = readRoom(typed.room, ROOM_FIELDS, tell);
  const people = readPeople(typed, tell);
  const bench: BenchInput = {
    ...(region !== '' && { region }),
    mixes: readMixes(typed, known, tell),
    surfaces: readIds(typed.surfaces, 'surfaces', 'surface', tell),
    ...(equipment.length > 0 && { equipment }),
    ...(typed.agentsAtHand && {
      agentsAtHand: readIds(typed.agentsAtHand, 'agentsAtHand', 'hand', tell),
    }),
    ...(uses.length > 0 && { uses }),
    ...(room && { room }),
    ...(people && { people }),
  };
  return problems.length > 0
    ? { problems: problems.slice(0, PROBLEMS_TOLD) }
    : { bench: canonicalBench(bench) };
}

/** True when there are no more than `most`; told as a problem otherwise. */
function mayHold(
  many: readonly unknown[],
  name:
    'mixes' | 'parts' | 'additives' | 'surfaces' | 'equipment' | 'agentsAtHand' | 'uses' | 'flags',
  path: string,
  field: string,
  tell: Tell,
): boolean {
  if (many.length <= MOST[name]) return true;
  tell(path, field, many.length.toLocaleString('en-GB'), ACCEPTS[name]);
  return false;
}

function readIds(
  typed: readonly string[],
  name: 'surfaces' | 'equipment' | 'agentsAtHand' | 'flags',
  field: string,
  tell: Tell,
  path = `/${name}`,
): string[] {
  const ids = cleanIds(typed);
  return mayHold(ids, name, path, field, tell) ? ids : [];
}

const cleanIds = (typed: readonly string[]): string[] =>
  [...new Set(typed.map(cleanText))].filter((id) => id !== '');

function readMixes(typed: TypedBench, known: KnownIds, tell: Tell): MixInput[] {
  if (!mayHold(typed.mixes, 'mixes', '/mixes', 'mixes', tell)) return [];
  return typed.mixes
    .map((mix, index) => readMix(mix, index, known, tell))
    .filter((mix) => mix.parts.length > 0 || mix.additives !== undefined);
}

function readMix(typed: TypedMix, index: number, known: KnownIds, tell: Tell): MixInput {
  const path = `/mixes/${index}`;
  const field = `mix${index}`;
  const name = cleanText(typed.name);
  const on = cleanIds(typed.on ?? []);
  const given = {
    parts: mergedParts(readParts(typed, path, field, known, tell)),
    additives: mergedAdditives(readAdditives(typed, path, field, known, tell)),
  };
  const { parts, additives } = isWhole(sharesWithExtenders(given, known))
    ? withExtendersAmongParts(given, known)
    : given;
  checkShares(parts, path, field, tell);
  return {
    ...(name !== '' && { name }),
    parts,
    ...(additives.length > 0 && { additives }),
    ...(typed.dried && { dried: true }),
    ...(on.length > 0 && { on }),
  };
}

function readParts(
  typed: TypedMix,
  path: string,
  field: string,
  known: KnownIds,
  tell: Tell,
): MixInput['parts'] {
  if (!mayHold(typed.parts, 'parts', `${path}/parts`, `${field}.ink`, tell)) return [];
  return typed.parts.map((part, index) => {
    const ink = cleanText(part.ink);
    const at = `${path}/parts/${index}`;
    const usual = known.inks.has(ink) ? `${field}.share.${ink}` : `${field}.typedShare`;
    if (ink === '') tell(`${at}/ink`, `${field}.typedInk`, part.ink, ACCEPTS.ink);
    const share = optional('share', part.share, `${at}/share`, part.field ?? usual, tell);
    return { ink, ...(share !== undefined && { share }) };
  });
}

function readAdditives(
  typed: TypedMix,
  path: string,
  field: string,
  known: KnownIds,
  tell: Tell,
): Additives {
  if (!mayHold(typed.additives, 'additives', `${path}/additives`, `${field}.additive`, tell)) {
    return [];
  }
  return typed.additives.map((one, index) => {
    const additive = cleanText(one.additive);
    const at = `${path}/additives/${index}`;
    const isListed = known.additives.has(additive) || known.extenders.has(additive);
    const usual = isListed ? `${field}.percent.${additive}` : `${field}.typedPercent`;
    if (additive === '') {
      tell(`${at}/additive`, `${field}.typedAdditive`, one.additive, ACCEPTS.additive);
    }
    const percent = optional('percent', one.percent, `${at}/percent`, one.field ?? usual, tell);
    return { additive, ...(percent !== undefined && { percent }) };
  });
}

interface Contents {
  readonly parts: MixInput['parts'];
  readonly additives: Additives;
}

const isWhole = (sum: number): boolean => Math.abs(sum - 100) <= SHARE_SLACK;

const shareOf = (part: MixInput['parts'][number]): number => part.share ?? Number.NaN;

/** NaN when a part or an extender lacks its share, or when no extender is given as an additive. */
function sharesWithExtenders(contents: Contents, known: KnownIds): number {
  return contents.additives.some((one) => known.extenders.has(one.additive))
    ? total(withExtendersAmongParts(contents, known).parts.map(shareOf))
    : Number.NaN;
}

/** "80 ink, 20 extender" says the same whether the extender is called a part or an additive. */
function withExtendersAmongParts({ parts, additives }: Contents, known: KnownIds): Contents {
  const isExtender = (one: Additives[number]) => known.extenders.has(one.additive);
  const extenders = additives.filter(isExtender).map(({ additive, percent }) => ({
    ink: additive,
    ...(percent !== undefined && { share: percent }),
  }));
  return {
    parts: mergedParts([...parts, ...extenders]),
    additives: additives.filter((one) => !isExtender(one)),
  };
}

/** Shares by weight add up to 100 when every part has one, and to no more when one lacks. */
function checkShares(parts: MixInput['parts'], path: string, field: string, tell: Tell): void {
  const shares = parts.flatMap((part) => (part.share === undefined ? [] : [part.share]));
  const sum = total(shares);
  if (shares.length === 0 || Number.isNaN(sum)) return;
  const isOpen = shares.length < parts.length;
  if (isOpen ? sum <= 100 + SHARE_SLACK : isWhole(sum)) return;
  const got = `shares that add up to ${sum.toLocaleString('en-GB')}`;
  tell(`${path}/parts`, `${field}.ink`, got, isOpen ? ACCEPTS.sumPart : ACCEPTS.sumWhole);
}

const total = (numbers: readonly number[]): number => numbers.reduce((sum, one) => sum + one, 0);

function readUses(typed: TypedBench, tell: Tell): NonNullable<BenchInput['uses']> {
  if (!mayHold(typed.uses, 'uses', '/uses', '', tell)) return [];
  return typed.uses.map((use, index) => {
    const agent = cleanText(use.agent);
    if (agent === '') tell(`/uses/${index}/agent`, '', use.agent, ACCEPTS.name);
    const ml = number('ml', use.ml, `/uses/${index}/ml`, '', tell);
    return { agent, ml };
  });
}

const YES = new Set(['yes', 'on', 'true', 'y']);
const NO = new Set(['', 'no', 'off', 'false', 'n']);

function readPeople(typed: TypedBench, tell: Tell): PeopleInput | undefined {
  const count = optional('count', typed.people.count, '/people/count', 'people', tell);
  const under16 = readUnder16(typed.people.under16, tell);
  const flags = readIds(typed.people.flags, 'flags', 'who', tell, '/people/flags');
  if (count === undefined && !under16 && flags.length === 0) return undefined;
  return {
    ...(count !== undefined && { count }),
    ...(under16 && { under16 }),
    ...(flags.length > 0 && { flags }),
  };
}

/** Yes, no, or how many of them there are. */
function readUnder16(typed: string, tell: Tell): boolean {
  const answer = typed.trim().toLowerCase();
  if (YES.has(answer) || NO.has(answer)) return YES.has(answer);
  const many = readNumber(answer);
  if (many === undefined || many < 0) {
    tell('/people/under16', 'under16', typed, ACCEPTS.yesNo);
  }
  return many !== 0;
}
