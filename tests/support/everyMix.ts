import { normaliseBench } from '../../server/reasoning/facts/normaliseBench.js';
import { makeBook } from '../../server/reasoning/book/book.js';
import type { Bench, BenchInput, MixInput } from '../../server/reasoning/index.js';
import { type Assessment, assess } from '../../server/reasoning/sheet/assess.js';
import { catalogue } from './rules.js';

export const book = makeBook(catalogue);

/** One thing that can be stirred into a mix: an ink (extenders among them) or an additive. */
export interface Thing {
  readonly kind: 'ink' | 'additive';
  readonly id: string;
}

/** All of them, 28 inks and 19 additives. */
export const THINGS: readonly Thing[] = [
  ...catalogue.inks.map((row) => ({ kind: 'ink' as const, id: row.id })),
  ...catalogue.additives.map((row) => ({ kind: 'additive' as const, id: row.id })),
];

/** The things stirred together. */
export const mixOf = (things: readonly Thing[], dried = false): MixInput => ({
  parts: things.filter(({ kind }) => kind === 'ink').map(({ id }) => ({ ink: id })),
  additives: things.filter(({ kind }) => kind === 'additive').map(({ id }) => ({ additive: id })),
  dried,
});

export const EVERY_SURFACE: readonly string[] = catalogue.surfaces.map((row) => row.id);

/**
 * Benches of surfaces that stand for all others. What takes a mix off a surface depends on the mix
 * and on that one surface alone, so the bench with every surface on it asks for every route there
 * is; surfaces meet only where the planner takes fewest agents and where rules ask for two marks at
 * once. The other four are the trades' own benches, where those meetings differ: roller and steel
 * bar, iron that keeps its oil film with type, mesh that stands no oil, and stone with leather.
 */
export const SURFACE_SETS: readonly (readonly string[])[] = [
  EVERY_SURFACE,
  ['glass-slab', 'lino-block', 'roller-polyurethane', 'steel-tools'],
  ['metal-type', 'wood-type', 'roller-nitrile', 'iron-press-bed'],
  ['screen-stencil', 'squeegee-polyurethane', 'glass-slab'],
  ['litho-stone', 'roller-leather-nap', 'tarlatan', 'copper-plate'],
];

/** Every pair of a list, each once. */
export function* pairsOf<T>(list: readonly T[]): Generator<readonly [T, T]> {
  for (const [at, one] of list.entries()) {
    for (const other of list.slice(at + 1)) yield [one, other];
  }
}

/** Every three of a list, each once. */
export function* triplesOf<T>(list: readonly T[]): Generator<readonly [T, T, T]> {
  for (const [at, one] of list.entries()) {
    for (const [two, three] of pairsOf(list.slice(at + 1))) yield [one, two, three];
  }
}

export const benchOf = (input: BenchInput): Bench => normaliseBench(book, input);

export const assessed = (input: BenchInput): Assessment => assess(book, benchOf(input));
