import type { Bench, BenchInput, Mix, MixInput, Room } from '../types.js';
import { type Book, resolveId } from '../book/book.js';

type Part = Mix['parts'][number];
type Dose = Mix['additives'][number];

/**
 * The bench made plain: typed names resolved to ids, extenders moved among the parts, everything
 * sorted and named once. Two benches that say the same come out equal.
 */
export const normaliseBench = (book: Book, input: BenchInput): Bench => {
  const region = input.region?.trim().toLowerCase() ?? 'other';
  const resolved = (kind: keyof Book['spoken'], ids: readonly string[] | undefined): string[] =>
    sortedOnce((ids ?? []).map((id) => resolveId(book, kind, id)).filter((id) => id !== ''));
  return {
    region: book.regions.has(region) ? region : 'other',
    mixes: plainMixes(book, input.mixes),
    surfaces: resolved('surface', input.surfaces),
    equipment: resolved('equipment', input.equipment),
    ...(input.agentsAtHand === undefined
      ? {}
      : { agentsAtHand: resolved('agent', input.agentsAtHand) }),
    uses: plainUses(book, input.uses ?? []),
    bottles: [...(input.bottles ?? [])].sort((a, b) =>
      compare(JSON.stringify(a), JSON.stringify(b)),
    ),
    ...(input.room === undefined ? {} : { room: plainRoom(input.room) }),
    people: {
      ...(input.people?.count === undefined ? {} : { count: input.people.count }),
      under16: input.people?.under16 ?? false,
      flags: sortedOnce((input.people?.flags ?? []).map((flag) => flag.trim().toLowerCase())),
    },
  };
};

const compare = (a: string, b: string): number => (a < b ? -1 : Number(a > b));

const sortedOnce = (ids: readonly string[]): string[] => [...new Set(ids)].sort(compare);

const plainRoom = (room: Room): Room =>
  Object.fromEntries(
    Object.entries(room)
      .filter(([, value]) => value !== undefined)
      .sort(([a], [b]) => compare(a, b)),
  );

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
  const isExtender = (id: string): boolean => book.inks.get(id)?.extender === true;
  const extenders = doses
    .filter((dose) => isExtender(dose.additive))
    .map((dose) => ({ ink: dose.additive, share: dose.percent }));
  const parts = mergeParts(
    mix.parts.map((part) => ({ ink: resolveId(book, 'ink', part.ink), share: part.share })),
    extenders,
  );
  const additives = largestOf(
    doses.filter((dose) => !isExtender(dose.additive) && dose.additive !== ''),
    (dose) => dose.additive,
    (dose) => dose.percent,
  ).map(({ additive, percent }): Dose =>
    percent === undefined ? { additive } : { additive, percent },
  );
  const name = mix.name?.trim().replace(/\s+/g, ' ');
  return {
    ...(name === undefined || name === '' ? {} : { name }),
    parts,
    additives: additives.sort((a, b) => compare(a.additive, b.additive)),
    dried: mix.dried ?? false,
    ...(mix.on === undefined || mix.on.length === 0
      ? {}
      : { on: sortedOnce(mix.on.map((id) => resolveId(book, 'surface', id))) }),
  };
};

interface LoosePart {
  readonly ink: string;
  readonly share: number | undefined;
}

/**
 * Parts and extenders as one list. An extender given as a percent of the mix takes its share and
 * leaves the rest to the others in proportion; one part without a share gets what is left.
 */
const mergeParts = (parts: readonly LoosePart[], extenders: readonly LoosePart[]): Part[] => {
  const named = largestOf(
    parts.filter((part) => part.ink !== ''),
    (part) => part.ink,
    (part) => part.share,
  );
  const asParts = largestOf(
    extenders.filter((each) => !named.some((part) => part.ink === each.ink)),
    (part) => part.ink,
    (part) => part.share,
  );
  const taken = total(asParts);
  const room = Math.max(0, 100 - taken) / 100;
  const scaled = named.map((part) => ({
    ink: part.ink,
    share: part.share === undefined ? undefined : part.share * room,
  }));
  return filledUp([...scaled, ...asParts])
    .map(({ ink, share }): Part => (share === undefined ? { ink } : { ink, share: tenths(share) }))
    .sort((a, b) => (b.share ?? -1) - (a.share ?? -1) || compare(a.ink, b.ink));
};

const total = (parts: readonly LoosePart[]): number =>
  parts.reduce((sum, part) => sum + (part.share ?? 0), 0);

const filledUp = (parts: readonly LoosePart[]): readonly LoosePart[] => {
  const open = parts.filter((part) => part.share === undefined);
  const left = 100 - total(parts);
  if (open.length !== 1 || left < 0) return parts;
  return parts.map((part) => (part.share === undefined ? { ...part, share: left } : part));
};

const tenths = (share: number): number => Math.round(share * 10) / 10;

/** One row a key; named twice, the larger figure stands. */
const largestOf = <T>(
  rows: readonly T[],
  keyOf: (row: T) => string,
  figureOf: (row: T) => number | undefined,
): T[] => {
  const largest = new Map<string, T>();
  for (const row of rows) {
    const seen = largest.get(keyOf(row));
    if (seen === undefined || (figureOf(row) ?? -1) > (figureOf(seen) ?? -1)) {
      largest.set(keyOf(row), row);
    }
  }
  return [...largest.values()];
};
