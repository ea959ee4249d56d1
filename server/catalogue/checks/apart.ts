import type { List } from '../reader.js';
import type { Checking } from './known.js';

/** One name means one thing where two tables share a column, and no row contradicts itself. */
export function checkApart({ tables, say }: Checking): void {
  const keepApart = (one: List<{ readonly id: string }>, other: List<unknown>, what: string) => {
    for (const { file, path, row } of one.rows) {
      if (other.ids?.has(row.id) === true) say(file, [...path, 'id'], row.id, what);
    }
  };
  keepApart(tables.additives, tables.inks, 'an id that no ink or extender has');
  keepApart(tables.others, tables.agents, 'an id that no agent has');

  for (const { file, path, row } of tables.inks.rows) {
    for (const column of ['liftsWet', 'liftsDried'] as const) {
      row[column].forEach((agent, place) => {
        if (!row.never.includes(agent)) return;
        say(file, [...path, column, place], agent, 'an agent that never does not name');
      });
    }
  }
  for (const { file, path, row } of tables.additives.rows) {
    row.lifts?.forEach((agent, place) => {
      if (row.never?.includes(agent) !== true) return;
      say(file, [...path, 'lifts', place], agent, 'an agent that never does not name');
    });
  }
}
