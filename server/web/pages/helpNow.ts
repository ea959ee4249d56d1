import type { FastifyInstance } from 'fastify';
import { helpNowView } from '../presenters/helpNowView.js';
import { HIDDEN } from './hidden.js';
import { sendKept, type KeptParts } from './keep.js';
import { queryOf } from './queryOf.js';

/** The region whose numbers are shown when none is named. */
const ELSEWHERE = 'other';

/** GET /help-now: something went wrong. Has to work at once, and without signal once seen. */
export function helpNowPages(app: FastifyInstance, parts: KeptParts): void {
  const { catalogue, words } = parts;
  app.get('/help-now', HIDDEN, (request, reply) => {
    const region = new URLSearchParams(queryOf(request)).get('in') ?? '';
    return sendKept(reply, parts, {
      key: `help ${region}`,
      name: 'helpNow',
      view: () => helpNowView(region, { catalogue, words, fallback: ELSEWHERE }),
    });
  });
}
