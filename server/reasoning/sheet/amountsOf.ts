import type { Amounts, Range } from '../types.js';
import type { Book } from '../book/book.js';
import { compare } from '../book/compare.js';
import { sure } from '../book/sure.js';
import type { Assessment } from './assess.js';

const NOTHING: Range = { low: 0, high: 0 };

const add = (a: Range, b: Range): Range => ({ low: a.low + b.low, high: a.high + b.high });

/**
 * Millilitres of each agent and rags for the bench, from the table's amounts for one surface of each
 * size. A surface counts once for an agent, however many mixes are on it. Common practice.
 */
export const amountsOf = (book: Book, assessed: Assessment): Amounts => {
  const once = new Map<number, Set<string>>();
  assessed.tasks.forEach((task, index) => {
    const choice = assessed.choices[index];
    if (choice === undefined) return;
    for (const agent of [choice.agent, choice.followUp]) {
      if (agent === undefined) continue;
      once.set(agent, (once.get(agent) ?? new Set()).add(task.surfaceId));
    }
  });
  const sizeOf = (surface: string): 'small' | 'medium' | 'large' =>
    book.surfaces.get(surface)?.surface.size ?? 'large';
  const ml = [...once]
    .map(([index, surfaces]) => {
      const agent = sure(book.agents[index]);
      const range = [...surfaces].map((id) => agent.ml[sizeOf(id)]).reduce(add, NOTHING);
      return { agent, range };
    })
    .sort((a, b) => a.agent.stage - b.agent.stage || compare(a.agent.id, b.agent.id))
    .map(({ agent, range }) => ({ agent: agent.id, range }));
  const rags = [...new Set(assessed.tasks.map((task) => task.surfaceId))]
    .map((surface) => book.catalogue.ragsFor[sizeOf(surface)])
    .reduce(add, NOTHING);
  return { ml, rags: { low: Math.ceil(rags.low), high: Math.ceil(rags.high) } };
};
