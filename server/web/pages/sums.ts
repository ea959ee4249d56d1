import type { FastifyInstance } from 'fastify';
import { makeSums } from '../forms/sums.js';
import { bodyOf } from '../forms/sumsBody.js';
import { readSumQuery } from '../forms/sumsQuery.js';
import { sumsView } from '../presenters/sumsView.js';
import { HIDDEN } from './hidden.js';
import { sendKept, type KeptParts } from './keep.js';
import { queryOf } from './queryOf.js';

/** GET /air/sums: the small sums as forms. The address holds what was typed, so it can be sent. */
export function sumsPages(app: FastifyInstance, parts: KeptParts): void {
  const { catalogue, words } = parts;
  const sums = makeSums(catalogue);
  const schemas = new Map(sums.map((sum) => [sum.id, bodyOf(sum, words.message)]));

  app.get('/air/sums', HIDDEN, (request, reply) => {
    const text = queryOf(request);
    const query = new URLSearchParams(text);
    const sum = sums.find(({ id }) => id === query.get('sum'));
    const schema = sum && schemas.get(sum.id);
    if (!sum || !schema) {
      const view = () => sumsView(sums, undefined, parts);
      return sendKept(reply, parts, { key: 'sums', name: 'sums', view });
    }
    const reading = readSumQuery(sum, schema, query, words.message);
    const view = () => sumsView(sums, { id: sum.id, query, ...reading }, parts);
    return reading.problems
      ? reply.code(422).header('cache-control', 'no-store').page('sums', view())
      : sendKept(reply, parts, { key: `sums ${text}`, name: 'sums', view });
  });
}
