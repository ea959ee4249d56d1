import type { FastifyReply } from 'fastify';
import { hashOf } from '../plugins/viewFiles.js';
import type { Parts } from '../parts.js';
import type { Finished } from '../plugins/finished.js';
import { HTML, type RenderPage } from '../plugins/views.js';
import type { PageCache } from './pageCache.js';

/**
 * A page that follows from its key and from nothing else but the program, its
 * tables and its templates: made once, then kept, and told apart by its key.
 */
export interface Keep {
  readonly kept: (key: string) => Finished | undefined;
  readonly make: (key: string, page: Maker) => Finished;
  /** The same page under another key. */
  readonly also: (key: string, page: Finished) => void;
}

interface Maker extends Pick<Finished, 'type' | 'canonical'> {
  readonly text: () => string;
}

/** What pages that are kept are made of. */
export interface KeptParts extends Parts {
  readonly keep: Keep;
  readonly renderPage: RenderPage;
}

/** `build` changes whenever the program, its tables or its templates do. */
export function makeKeep(cache: PageCache, build: string): Keep {
  return {
    kept: cache.get,
    make: (key, { text, ...rest }) => {
      const etag = `W/"${hashOf(`${build} ${key}`)}"`;
      const page: Finished = { ...rest, etag, body: Buffer.from(text()) };
      cache.put(key, page);
      return page;
    },
    also: cache.put,
  };
}

/** Sends the kept page of that key, made now if need be. The browser asks again each time: 304 mostly. */
export function sendKept(
  reply: FastifyReply,
  { keep, renderPage }: KeptParts,
  page: { readonly key: string; readonly name: string; readonly view: () => object },
): FastifyReply | Promise<FastifyReply> {
  const { key, name, view } = page;
  const finished =
    keep.kept(key) ?? keep.make(key, { type: HTML, text: () => renderPage(name, view()) });
  return reply.header('cache-control', 'no-cache').finished(finished);
}
