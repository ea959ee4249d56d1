import type { FastifyInstance } from 'fastify';
import { qrSvg } from '../../output/qr/qrSvg.js';
import { canonicalAddress, parseAddress } from '../forms/address.js';
import { HIDDEN } from './hidden.js';
import { queryOf } from './queryOf.js';
import type { SheetParts } from './sheet.js';

/** A host as it may stand in an address: name or number, with or without a port. */
const HOST = /^([\w.-]+|\[[\da-f:.]+\])(:\d+)?$/i;
/** More than this does not fit a QR code that a phone can read off paper. */
const MOST_LETTERS = 1200;

/**
 * GET /qr.svg: the address of a sheet as a QR code, for its print. It has an
 * address of its own, as it leads to the public address where one is set and
 * else to whatever name this server was reached by.
 */
export function qrPages(app: FastifyInstance, { keep, known, publicOrigin }: SheetParts): void {
  app.get('/qr.svg', HIDDEN, (request, reply) => {
    const { bench, problems } = parseAddress(queryOf(request), known);
    if (!bench) return reply.problem('BENCH_WRONG', { problems });
    const origin = publicOrigin ?? `${request.protocol}://${request.host}`;
    const address = `${origin}/sheet?${canonicalAddress(bench)}`;
    if ((publicOrigin === undefined && !HOST.test(request.host)) || address.length > MOST_LETTERS) {
      return reply.problem('PAGE_UNKNOWN');
    }
    const key = `qr ${address}`;
    const page =
      keep.kept(key) ?? keep.make(key, { type: 'image/svg+xml', text: () => qrSvg(address) });
    return reply.header('cache-control', 'no-cache').finished(page);
  });
}
