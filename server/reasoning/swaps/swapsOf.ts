import { type AirAnswer, type Bench, type Mix, SCALES, type Swap } from '../types.js';
import { airOutOf } from '../air/airOf.js';
import type { Book } from '../book/book.js';
import { sure } from '../book/sure.js';
import { amountsOf } from '../sheet/amountsOf.js';
import { type Assessment, assess } from '../sheet/assess.js';
import { sheetAir } from '../sheet/sheetAir.js';

const SHOWN = 2;

interface Change {
  readonly kind: Swap['kind'];
  readonly what: string;
  readonly for?: string;
  readonly bench: Bench;
}

/**
 * What if a thing on the bench were left out, or swapped for its milder kind? The one or two changes
 * that bring most levels down and none up, leaving out before swapping.
 */
export const swapsOf = (
  book: Book,
  bench: Bench,
  now: Assessment,
  air: AirAnswer | undefined,
): readonly Swap[] => {
  const found = changesOf(book, bench).flatMap((change) => {
    const after = assess(book, change.bench);
    const drop = dropOf(now, after);
    return drop === undefined || drop === 0
      ? []
      : [{ change, after, swap: asSwap(book, change, now, after), drop }];
  });
  return found
    .sort((a, b) => b.drop - a.drop || rank(a.swap) - rank(b.swap))
    .slice(0, SHOWN)
    .map(({ change, after, swap }) => ({
      ...swap,
      ...vapourSpared(book, change.bench, now, after, air),
    }));
};

/** A swap before its vapour is counted: only what is shown is. */
type Levelled = Omit<Swap, 'sparesMl' | 'sparesAirOutMin'>;

const rank = (swap: Levelled): number => (swap.kind === 'leave-out' ? 0 : 1);

/** Steps that all scales come down together; undefined when any goes up. */
const dropOf = (now: Assessment, after: Assessment): number | undefined => {
  let drop = 0;
  for (let scale = 0; scale < SCALES.length; scale += 1) {
    const step = sure(now.held.heights[scale]) - sure(after.held.heights[scale]);
    if (step < 0) return undefined;
    drop += step;
  }
  return drop;
};

const asSwap = (book: Book, change: Change, now: Assessment, after: Assessment): Levelled => ({
  kind: change.kind,
  what: change.what,
  ...(change.for === undefined ? {} : { for: change.for }),
  spares: SCALES.flatMap((scale, index) => {
    const from = sure(now.held.heights[index]);
    const to = sure(after.held.heights[index]);
    const { levels } = sure(book.catalogue.scales.find((each) => each.id === scale));
    return from === to ? [] : [{ scale, from: sure(levels[from]).id, to: sure(levels[to]).id }];
  }),
  sparesAgents: book.agents
    .filter((_, index) => (now.plan.agents & ~after.plan.agents & (1 << index)) !== 0)
    .map((agent) => agent.id),
});

/** What is not put out into the air, and how much sooner the room is aired. */
const vapourSpared = (
  book: Book,
  changed: Bench,
  now: Assessment,
  after: Assessment,
  air: AirAnswer | undefined,
): Pick<Swap, 'sparesMl' | 'sparesAirOutMin'> => {
  const then = amountsOf(book, after);
  const left = new Map(then.ml.map(({ agent, range }) => [agent, range.high]));
  const sparesMl = amountsOf(book, now).ml.flatMap(({ agent, range }) => {
    const hazard = sure(now.hazards[sure(book.agentIndex.get(agent))]);
    const ml = range.high - (left.get(agent) ?? 0);
    return hazard.vapourRank > 0 && ml > 0 ? [{ agent, ml }] : [];
  });
  const before = air?.airOutMin;
  if (before === undefined) return { sparesMl };
  const asked = sheetAir(book, changed, then, after.hazards);
  // The same air: a room that clears now clears then.
  const spared = before - (asked === undefined ? 0 : sure(airOutOf(book.air, asked)));
  return { sparesMl, ...(spared > 0 ? { sparesAirOutMin: spared } : {}) };
};

const changesOf = (book: Book, bench: Bench): readonly Change[] => [
  ...bench.mixes.flatMap((mix) => mixChanges(book, bench, mix)),
  ...bench.uses.map((use) => ({
    kind: 'leave-out' as const,
    what: `agent.${use.agent}`,
    bench: { ...bench, uses: bench.uses.filter((each) => each !== use) },
  })),
];

const mixChanges = (book: Book, bench: Bench, mix: Mix): readonly Change[] => {
  if (mix.dried) return [];
  const withMix = (changed: Mix): Bench => ({
    ...bench,
    mixes: bench.mixes.map((each) => (each === mix ? changed : each)),
  });
  const parts = mix.parts.flatMap((part): readonly Change[] => {
    const rest = mix.parts.filter((each) => each !== part);
    const out: Change[] =
      rest.length === 0
        ? []
        : [{ kind: 'leave-out', what: `ink.${part.ink}`, bench: withMix({ ...mix, parts: rest }) }];
    const milder = (book.inks.get(part.ink)?.milder ?? []).map((id): Change => ({
      kind: 'swap',
      what: `ink.${part.ink}`,
      for: `ink.${id}`,
      bench: withMix({
        ...mix,
        parts: mix.parts.map((each) => (each === part ? { ...each, ink: id } : each)),
      }),
    }));
    return [...out, ...milder];
  });
  const additives = mix.additives.flatMap((dose): readonly Change[] => [
    {
      kind: 'leave-out',
      what: `additive.${dose.additive}`,
      bench: withMix({ ...mix, additives: mix.additives.filter((each) => each !== dose) }),
    },
    ...(book.additives.get(dose.additive)?.milder ?? []).map((id): Change => ({
      kind: 'swap',
      what: `additive.${dose.additive}`,
      for: `additive.${id}`,
      bench: withMix({
        ...mix,
        additives: mix.additives.map((each) => (each === dose ? { ...each, additive: id } : each)),
      }),
    })),
  ]);
  return [...parts, ...additives];
};
