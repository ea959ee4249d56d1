import type { Stream, StreamReached } from '../types.js';
import type { Assessment } from '../sheet/assess.js';
import type { Book } from '../book/book.js';

/**
 * The rag streams that the rules ask for, each with what sends rags there. The mildest stream is
 * dropped as soon as another stands: one sheet never gives two answers for the same rag.
 */
export const streamsReached = (book: Book, assessed: Assessment): readonly StreamReached[] => {
  const { held } = assessed;
  const asked = book.catalogue.streams.filter((stream) =>
    held.rules.some(({ rule }) => rule.streams.includes(stream.id)),
  );
  const heightOf = (stream: Stream): number => book.heightOf('rags', stream.level);
  const kept = asked.some((stream) => heightOf(stream) > 0)
    ? asked.filter((stream) => heightOf(stream) > 0)
    : asked;
  return kept
    .map((stream): StreamReached => {
      const rules = held.rules.filter(({ rule }) => rule.streams.includes(stream.id));
      const tags = rules.flatMap(({ rule }) => [...rule.when, ...rule.anyOf]);
      return {
        id: stream.id,
        level: stream.level,
        selfHeating: stream.selfHeating,
        items: itemsOf(book, assessed, tags),
        because: rules.map(({ rule }) => rule.id),
      };
    })
    .sort((a, b) => book.heightOf('rags', b.level) - book.heightOf('rags', a.level));
};

/**
 * Inks, additives and agents that bear one of the tags, those that nobody knows among them, and
 * what is in a mix that no agent takes off. Where none of these does, the agents that might yet be
 * used.
 */
export const itemsOf = (
  book: Book,
  assessed: Assessment,
  tags: readonly string[],
): readonly string[] => {
  const bears = (row: string): boolean =>
    book.tagsOf.get(row)?.some((tag) => tags.includes(tag)) === true;
  const unknown = assessed.facts.unknown
    .filter((each) => tags.includes(`unknown.${each.kind}`))
    .map((each) => `${each.kind}.${each.id}`);
  const stuck = tags.includes('state.no-agent') ? inksOfStuck(assessed) : [];
  const present = [...[...assessed.rows].filter(bears), ...unknown, ...stuck];
  const things = [...new Set(present)].filter(isThing);
  return things.length > 0 ? things : assessed.mightRows.filter(bears);
};

const inksOfStuck = ({ tasks }: Assessment): readonly string[] =>
  tasks
    .filter((task) => task.stuck !== undefined)
    .flatMap((task) => task.mix.parts.map((part) => `ink.${part.ink}`));

const isThing = (row: string): boolean => /^(ink|additive|agent)\./.test(row);
