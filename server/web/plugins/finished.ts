import { promisify } from 'node:util';
import { gzip } from 'node:zlib';
import type { FastifyInstance, FastifyReply, FastifyRequest } from 'fastify';

declare module 'fastify' {
  interface FastifyReply {
    /** Sends something that is ready as bytes: 304 when the asker has it, squeezed when they can take it. */
    finished: (page: Finished) => FastifyReply | Promise<FastifyReply>;
  }
}

/** An answer that is ready to be sent, now and again. */
export interface Finished {
  readonly type: string;
  /** Weak: the same words, squeezed or not. Absent: never to be taken for another. */
  readonly etag?: string;
  readonly body: Buffer;
  /** The one address of what is in it, where it can be reached by several. */
  readonly canonical?: string;
}

const SQUEEZED_FROM_BYTES = 1024;
const SQUEEZES = /^(text\/|application\/(json|problem\+json|manifest\+json)|image\/svg)/;

const squeeze = promisify(gzip);

/** Squeezed copies live as long as the bytes that they are copies of. */
const squeezed = new WeakMap<Buffer, Promise<Buffer>>();

/** Gives each reply `finished`. */
export function useFinished(app: FastifyInstance): void {
  app.decorateReply('finished', function (this: FastifyReply, page: Finished) {
    if (page.canonical !== undefined) this.header('link', `<${page.canonical}>; rel="canonical"`);
    if (page.etag !== undefined) {
      this.header('etag', page.etag);
      if (hasAlready(this.request, page.etag)) return this.code(304).send();
    }
    this.type(page.type);
    const isLong = page.body.length >= SQUEEZED_FROM_BYTES && SQUEEZES.test(page.type);
    if (!isLong) return this.send(page.body);
    this.header('vary', addTo(this.getHeader('vary'), 'Accept-Encoding'));
    return takesGzip(this.request) ? sendSqueezed(this, page.body) : this.send(page.body);
  });
}

async function sendSqueezed(reply: FastifyReply, body: Buffer): Promise<FastifyReply> {
  const known = squeezed.get(body) ?? squeeze(body);
  squeezed.set(body, known);
  return reply.header('content-encoding', 'gzip').send(await known);
}

const addTo = (header: unknown, name: string): string =>
  typeof header === 'string' && header !== '' ? `${header}, ${name}` : name;

const takesGzip = (request: FastifyRequest): boolean =>
  /\bgzip\b(?!\s*;\s*q=0(\.0*)?\s*(,|$))/.test(request.headers['accept-encoding'] ?? '');

/** RFC 9110, 13.1.2, with weak comparison. */
function hasAlready(request: FastifyRequest, etag: string): boolean {
  const asked = request.headers['if-none-match'];
  if (asked === undefined) return false;
  return (
    asked === etag || asked.split(',').some((one) => one.trim() === etag || one.trim() === '*')
  );
}
