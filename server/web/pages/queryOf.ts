import type { FastifyRequest } from 'fastify';

/** What stands after "?" of the address that was asked for, still encoded. */
export function queryOf(request: FastifyRequest): string {
  const at = request.url.indexOf('?');
  return at < 0 ? '' : request.url.slice(at + 1);
}
