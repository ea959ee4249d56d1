import type { Checking } from './known.js';

/** There is a row for each surface with each agent, and none for anything else. */
export function checkPairs({ tables, say, expect }: Checking): void {
  const { pairs, surfaces, agents } = tables;
  for (const at of pairs.rows) {
    expect(at, ['surface'], at.row.surface, { what: 'a surface id', ids: surfaces.ids });
    expect(at, ['agent'], at.row.agent, { what: 'an agent id', ids: agents.ids });
  }
  if (pairs.ids === undefined) return;
  for (const surface of surfaces.ids ?? []) {
    const nearest = pairs.rows.findLast(({ row }) => row.surface === surface)?.path ?? pairs.path;
    for (const agent of agents.ids ?? []) {
      const id = `${surface}.${agent}`;
      if (pairs.ids.has(id)) continue;
      say(pairs.file, nearest, undefined, 'a row for this surface with this agent', `pairs.${id}`);
    }
  }
}
