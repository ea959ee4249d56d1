import type { Bench, BenchInput, Bottle, Mix, MixInput, PeopleInput } from '../types.js';
import { type Book, resolveId } from '../book/book.js';
import { compare } from '../book/compare.js';
import { largestOf } from '../book/largestOf.js';

type Part = Mix['parts'][number];
type Dose = Mix['additives'][number];

/**
 * The bench made plain: typed names resolved to ids, extenders moved among the parts, everything
 * sorted and named once. Two benches that say the same come out equal.
 */
export const normaliseBench = (book: Book, input: BenchInput): Bench => {
  const region = input.region?.trim().toLowerCase() ?? 'other';
  return {
    region: book.regions.has(region) ? region : 'other',
    mixes: plainMixes(book, input.mixes),
    surfaces: resolved(book, 'surface', input.surfaces),
    equipment: resolved(book, 'equipment', input.equipment),
    ...(input.agentsAtHand === undefined
      ? {}
      : { agentsAtHand: resolved(book, 'agent', input.agentsAtHand) }),
    uses: plainUses(book, input.uses ?? []),
    bottles: plainBottles(book, input.bottles ?? []),
    ...(input.room === undefined ? {} : { room: inKeyOrder(input.room) }),
    people: plainPeople(input.people ?? {}),
  };
};

/** "Under 16" is a question of its own; ticked among the circumstances it means the same. */
const plainPeople = (people: PeopleInput): Bench['people'] => {
  const flags = (people.flags ?? []).map((flag) => flag.trim().toLowerCase());
  return {
    ...(people.count === undefined ? {} : { count: people.count }),
    under16: (people.under16 ?? false) || flags.includes(UNDER_16),
    flags: sortedOnce(flags.filter((flag) => flag !== UNDER_16 && flag !== '')),
  };
};

const UNDER_16 = 'under16';

const sortedOnce = (ids: readonly string[]): string[] => [...new Set(ids)].sort(compare);

const resolved = (
  book: Book,
  kind: keyof Book['spoken'],
  ids: readonly string[] | undefined,
): string[] =>
  sortedOnce((ids ?? []).map((id) => resolveId(book, kind, id)).filter((id) => id !== ''));

/** The same with its keys sorted and none of them empty. */
const inKeyOrder = <T extends object>(thing: T): T =>
  Object.fromEntries(
    Object.entries(thing)
      .filter(([, value]) => value !== undefined)
      .sort(([a], [b]) => compare(a, b)),
  ) as T;

const plainBottles = (book: Book, bottles: readonly Bottle[]): Bench['bottles'] => {
  const keyed = bottles.map((bottle) => {
    const agent = resolveId(book, 'agent', bottle.agent);
    const codes = bottle.hazardCodes;
    const plain = inKeyOrder({
      ...bottle,
      agent,
      hazardCodes: codes === undefined ? undefined : sortedOnce(codes),
    });
    return [JSON.stringify(plain), plain] as const;
  });
  return [...new Map(keyed).entries()].sort(([a], [b]) => compare(a, b)).map(([, each]) => each);
};

const plainUses = (book: Book, uses: NonNullable<BenchInput['uses']>): Bench['uses'] => {
  const once = new Map(
    uses.map((use) => {
      const agent = resolveId(book, 'agent', use.agent);
      return [`${agent} ${String(use.ml)}`, { agent, ml: use.ml }] as const;
    }),
  );
  return [...once.values()].sort((a, b) => compare(a.agent, b.agent) || a.ml - b.ml);
};

const plainMixes = (book: Book, mixes: readonly MixInput[]): Bench['mixes'] => {
  const keyed = mixes
    .map((mix) => plainMix(book, mix))
    .filter((mix) => mix.parts.length > 0 || mix.additives.length > 0)
    .map((mix) => [JSON.stringify(mix), mix] as const);
  const once = [...new Map(keyed).entries()].sort(([a], [b]) => compare(a, b));
  return once.map(([, mix], index) => ({ id: `mix-${String(index + 1)}`, ...mix }));
};

const plainMix = (book: Book, mix: MixInput): Omit<Mix, 'id'> => {
  const doses = (mix.additives ?? []).map((dose) => ({
    additive: resolveId(book, 'additive', dose.additive),
    percent: dose.percent,
  }));
  const extenders = doses
    .filter((dose) => isExtender(book, dose.additive))
    .map((dose) => ({ ink: dose.additive, share: dose.percent }));
  const parts = mergeParts(book, [
    ...mix.parts.map((part) => ({ ink: resolveId(book, 'ink', part.ink), share: part.share })),
    ...extenders,
  ]);
  const additives = largestOf(
    doses.filter((dose) => !isExtender(book, dose.additive) && dose.additive !== ''),
    (dose) => dose.additive,
    (dose) => dose.percent,
  ).map(({ additive, percent }): Dose =>
    percent === undefined ? { additive } : { additive, percent },
  );
  const name = mix.name?.trim().replace(/\s+/g, ' ');
  const on = resolved(book, 'surface', mix.on);
  return {
    ...(name === undefined || name === '' ? {} : { name }),
    parts,
    additives: additives.sort((a, b) => compare(a.additive, b.additive)),
    dried: mix.dried ?? false,
    ...(on.length === 0 ? {} : { on }),
  };
};

const isExtender = (book: Book, ink: string): boolean => book.inks.get(ink)?.extender === true;

interface LoosePart {
  readonly ink: string;
  readonly share: number | undefined;
}

/**
 * Parts and extenders as one list. An extender keeps the share that was said for it, and inks give
 * way in proportion when all together come to more than the whole. One ink without a share gets what
 * is left; an extender without one gets no figure, as nobody said how much.
 */
const mergeParts = (book: Book, parts: readonly LoosePart[]): Part[] => {
  const once = largestOf(
    parts.filter((part) => part.ink !== ''),
    (part) => part.ink,
    (part) => part.share,
  ).sort((a, b) => compare(a.ink, b.ink));
  return filledUp(book, givenWay(book, once))
    .map(({ ink, share }): Part => (share === undefined ? { ink } : { ink, share: tenths(share) }))
    .sort((a, b) => (b.share ?? -1) - (a.share ?? -1) || compare(a.ink, b.ink));
};

const WHOLE = 100;

const givenWay = (book: Book, parts: readonly LoosePart[]): readonly LoosePart[] => {
  const extended = total(parts.filter((part) => isExtender(book, part.ink)));
  const rest = total(parts) - extended;
  const room = Math.max(0, WHOLE - extended);
  // Less than one percent over is rounding, so that a bench made plain stays as it is.
  if (extended === 0 || rest < room + 1) return parts;
  return parts.map((part) =>
    part.share === undefined || isExtender(book, part.ink)
      ? part
      : { ink: part.ink, share: (part.share * room) / rest },
  );
};

const total = (parts: readonly LoosePart[]): number =>
  parts.reduce((sum, part) => sum + (part.share ?? 0), 0);

const filledUp = (book: Book, parts: readonly LoosePart[]): readonly LoosePart[] => {
  const [open, ...others] = parts.filter((part) => part.share === undefined);
  const left = WHOLE - total(parts);
  if (open === undefined || others.length > 0 || left < 0 || isExtender(book, open.ink)) {
    return parts;
  }
  return parts.map((part) => (part === open ? { ...part, share: left } : part));
};

const tenths = (share: number): number => Math.round(share * 10) / 10;
