import type { FastifyInstance } from 'fastify';
import { shown } from '../forms/text.js';
import { ruleView } from '../presenters/ruleView.js';
import { rulesView } from '../presenters/rulesView.js';
import { HIDDEN } from './hidden.js';
import { sendKept, type KeptParts } from './keep.js';
import { queryOf } from './queryOf.js';

/** GET /rules and /rules/:id: every row of every table, in words, with its sources. */
export function rulesPages(app: FastifyInstance, parts: KeptParts): void {
  const { words } = parts;
  app.get('/rules', HIDDEN, (request, reply) => {
    const query = new URLSearchParams(queryOf(request));
    const search = { q: shown(query.get('q') ?? ''), table: query.get('table') ?? '' };
    return sendKept(reply, parts, {
      key: `rules ${JSON.stringify(search)}`,
      name: 'rules',
      view: () => rulesView(search, words),
    });
  });

  app.get<{ Params: { id: string } }>('/rules/:id', HIDDEN, (request, reply) => {
    const { id } = request.params;
    const view = ruleView(id, words);
    if (!view) return reply.problem('RULE_UNKNOWN', { values: { id: shown(id) } });
    return sendKept(reply, parts, { key: `rule ${id}`, name: 'rule', view: () => view });
  });
}
