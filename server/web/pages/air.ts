import type { FastifyInstance, FastifyReply } from 'fastify';
import type { AirInput } from '../../reasoning/index.js';
import { airFormOf, canonicalAirAddress, parseAirAddress } from '../forms/airAddress.js';
import type { KnownIds } from '../forms/known.js';
import { HTML } from '../plugins/views.js';
import { airView } from '../presenters/airView.js';
import type { KeptParts } from './keep.js';
import { HIDDEN } from './hidden.js';
import { queryOf } from './queryOf.js';

interface AirParts extends KeptParts {
  readonly known: KnownIds;
}

/** Names that only the page's own form sends. */
const OF_THE_FORM = /(^|&)(m3|what\d+)=/;
/** The button for more rows sends how many there shall be. */
const ROWS = 'rows';

/** GET /air: the address holds the room and its uses. The form is sent on to that address. */
export function airPages(app: FastifyInstance, parts: AirParts): void {
  const { keep, known, publicOrigin } = parts;
  app.get('/air', HIDDEN, (request, reply) => {
    const query = queryOf(request);
    const key = `air ${query}`;
    reply.header('cache-control', 'no-cache');
    const kept = keep.kept(key);
    if (kept) return reply.finished(kept);
    const rows = Number(new URLSearchParams(query).get(ROWS) ?? 0) || 0;
    if (rows > 0) return unanswered(reply, parts, { query, rows, problems: [] });
    const { input, problems } = parseAirAddress(query, known);
    if (!input) return unanswered(reply.code(422), parts, { query, rows, problems });
    const address = canonicalAirAddress(input);
    const path = address === '' ? '/air' : `/air?${address}`;
    if (OF_THE_FORM.test(query)) return reply.redirect(path, 303);
    const page =
      keep.kept(`air ${address}`) ??
      keep.make(`air ${address}`, {
        type: HTML,
        canonical: `${publicOrigin ?? ''}${path}`,
        text: () => pageOf(input, address, parts),
      });
    if (address !== query) keep.also(key, page);
    return reply.finished(page);
  });
}

const pageOf = (input: AirInput, address: string, parts: AirParts): string =>
  parts.renderPage(
    'air',
    airView({ ...parts, form: airFormOf(address), problems: [], rows: 0, input }),
  );

/** The form alone, with all that was typed. */
const unanswered = (
  reply: FastifyReply,
  parts: AirParts,
  said: Pick<Parameters<typeof airView>[0], 'problems' | 'rows'> & { readonly query: string },
): FastifyReply | Promise<FastifyReply> =>
  reply
    .header('cache-control', 'no-store')
    .page('air', airView({ ...parts, ...said, form: airFormOf(said.query) }));
