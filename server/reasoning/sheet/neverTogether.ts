import type { Bench } from '../types.js';
import type { Book } from '../book/book.js';
import type { Assessment } from './assess.js';

/**
 * Pairs that must not meet, with what stands on each side. Things that only stand at hand count as
 * well: a stop line costs nothing.
 */
export const neverTogetherOf = (
  book: Book,
  bench: Bench,
  assessed: Assessment,
): readonly { readonly id: string; readonly because: readonly string[] }[] => {
  const tags = new Set(assessed.tags);
  for (const id of bench.agentsAtHand ?? []) {
    const agent = book.agents[book.agentIndex.get(id) ?? -1];
    if (agent === undefined) continue;
    tags.add(`agent.${id}`);
    for (const mark of agent.marks) tags.add(`mark.${mark}`);
  }
  const isPresent = (tag: string): boolean => tags.has(tag);
  return book.catalogue.neverTogether
    .filter((row) => row.one.some(isPresent) && row.other.some(isPresent))
    .map((row) => ({ id: row.id, because: [`never.${row.id}`] }));
};
