import type { FastifyInstance } from 'fastify';
import { HIDDEN } from '../pages/hidden.js';
import type { Asset } from './viewFiles.js';

const FOR_EVER = 'public, max-age=31536000, immutable';
const ASK_AGAIN = 'no-cache';
const SERVICE_WORKER = 'sw.js';

/**
 * Serves what was read from views/assets at the start, from memory: a name that
 * is not among them cannot be reached, whatever the address says.
 */
export function useStaticFiles(app: FastifyInstance, assets: ReadonlyMap<string, Asset>): void {
  app.get<{ Params: { '*': string }; Querystring: { v?: string } }>(
    '/assets/*',
    HIDDEN,
    (request, reply) => {
      const asset = assets.get(request.params['*']);
      if (!asset) return reply.problem('PAGE_UNKNOWN');
      const isThisVersion = request.query.v === asset.version;
      return reply
        .header('cache-control', isThisVersion ? FOR_EVER : ASK_AGAIN)
        .finished({ type: asset.type, etag: `W/"${asset.version}"`, body: asset.body });
    },
  );
  const worker = assets.get(SERVICE_WORKER);
  if (!worker) return;
  app.get(`/${SERVICE_WORKER}`, HIDDEN, (_request, reply) =>
    reply
      .header('cache-control', ASK_AGAIN)
      .finished({ type: worker.type, etag: `W/"${worker.version}"`, body: worker.body }),
  );
}
