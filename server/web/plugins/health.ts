import type { FastifyInstance } from 'fastify';
import { HIDDEN } from '../pages/hidden.js';

/** Says that the process answers, and with which program and tables. */
export function useHealth(
  app: FastifyInstance,
  versions: { readonly version: string; readonly rules: string },
): void {
  app.get('/healthz', HIDDEN, (_request, reply) =>
    reply.header('cache-control', 'no-store').send({ status: 'ok', ...versions }),
  );
}
