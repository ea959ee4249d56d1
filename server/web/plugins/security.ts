import helmet from '@fastify/helmet';
import type { FastifyInstance } from 'fastify';

/**
 * Headers that keep a page to itself: nothing from other servers, nothing
 * inline, no frame, no camera or place, no address told to others.
 */
export async function useSecurity(app: FastifyInstance): Promise<void> {
  await app.register(helmet, {
    contentSecurityPolicy: {
      useDefaults: false,
      directives: {
        defaultSrc: ["'self'"],
        baseUri: ["'none'"],
        formAction: ["'self'"],
        frameAncestors: ["'none'"],
        objectSrc: ["'none'"],
      },
    },
    crossOriginEmbedderPolicy: false,
    referrerPolicy: { policy: 'same-origin' },
    // TLS, where there is any, ends before this process.
    strictTransportSecurity: false,
    xFrameOptions: { action: 'deny' },
  });
  app.addHook('onRequest', (_request, reply, done) => {
    reply.header('permissions-policy', 'camera=(), geolocation=(), microphone=(), payment=()');
    done();
  });
}
