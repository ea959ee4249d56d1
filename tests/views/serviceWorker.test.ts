import { createContext, runInContext } from 'node:vm';
import { describe, expect, it } from 'vitest';
import { files } from '../support/views.js';

const source = files.assets.get('sw.js')?.body.toString('utf8') ?? '';
const ORIGIN = 'https://sheets.example';
const HOUR_MS = 60 * 60 * 1000;
const NOW = Date.parse('2026-11-25T12:00:00Z');

interface Asked {
  readonly method: 'GET';
  readonly url: string;
}

const asked = (path: string): Asked => ({ method: 'GET', url: ORIGIN + path });
const pageOf = (words: string, ageMs = 0) =>
  new Response(words, { headers: { date: new Date(NOW - ageMs).toUTCString() } });

/** As much of the Cache interface as the service worker uses. */
function aCache() {
  const pages = new Map<string, Response>();
  return {
    pages,
    match: async ({ url }: Asked) => Promise.resolve(pages.get(url)?.clone()),
    put: async ({ url }: Asked, page: Response) => Promise.resolve(pages.set(url, page)),
    delete: async ({ url }: Asked) => Promise.resolve(pages.delete(url)),
    keys: async () => Promise.resolve([...pages.keys()].map((url) => ({ url }))),
  };
}

/** The service worker on a network of our own; what it waits for is over at once. */
function aWorker(network: () => Promise<Response>) {
  const cache = aCache();
  const handlers = new Map<string, (event: object) => void>();
  const waits: number[] = [];
  const self = {
    addEventListener: (name: string, handler: (event: object) => void) =>
      handlers.set(name, handler),
  };
  const Clock = Object.assign(Object.create(Date) as object, { now: () => NOW, parse: Date.parse });
  runInContext(
    source,
    createContext({
      self,
      caches: { open: async () => Promise.resolve(cache) },
      location: new URL(ORIGIN),
      fetch: network,
      setTimeout: (wake: () => void, ms: number) => {
        waits.push(ms);
        setTimeout(wake, 5);
      },
      Date: Clock,
      URL,
      Response,
      Promise,
    }),
  );
  const ask = async (path: string): Promise<string> => {
    let answer: Promise<Response> = Promise.resolve(new Response('not asked'));
    handlers.get('fetch')?.({
      request: asked(path),
      respondWith: (given: Promise<Response>) => (answer = given),
      waitUntil: () => undefined,
    });
    const response = await answer;
    return response.type === 'error' ? 'no answer' : response.text();
  };
  return { ask, waits, keep: cache.put, kept: () => [...cache.pages.keys()] };
}

const never = () => new Promise<Response>(() => undefined);
const down = () => Promise.reject(new TypeError('no network'));
const SHEET = '/sheet?mix=oil-relief&who=pregnant';

describe('the service worker', () => {
  it('gives the page of the network when there is one, and keeps it', async () => {
    const worker = aWorker(() => Promise.resolve(pageOf('new')));
    await worker.keep(asked(SHEET), pageOf('kept'));
    expect(await worker.ask(SHEET)).toBe('new');
    expect(await worker.ask('/rules')).toBe('not asked');
    expect(worker.kept()).toEqual([ORIGIN + SHEET]);
  });

  it('gives the kept page after three seconds of silence, and at once when the network is down', async () => {
    for (const network of [never, down]) {
      const worker = aWorker(network);
      await worker.keep(asked(SHEET), pageOf('kept', HOUR_MS));
      expect(await worker.ask(SHEET)).toBe('kept');
      expect(worker.waits).toEqual([3000]);
    }
    expect(await aWorker(down).ask(SHEET)).toBe('no answer');
  });

  it('waits on for a slow page when nothing is kept', async () => {
    const slow = () =>
      new Promise<Response>((resolve) => {
        setTimeout(() => {
          resolve(pageOf('late'));
        }, 30);
      });
    expect(await aWorker(slow).ask(SHEET)).toBe('late');
  });

  it('lets go of sheets and filled-in benches after half a day, never of help', async () => {
    const worker = aWorker(down);
    for (const path of [SHEET, '/?mix=oil-relief', '/help-now?in=uk', '/']) {
      await worker.keep(asked(path), pageOf(path, 13 * HOUR_MS));
    }
    await worker.keep(asked('/sheet?mix=oil-etching'), pageOf('young', 11 * HOUR_MS));
    expect(await worker.ask(SHEET)).toBe('no answer');
    expect(worker.kept()).toEqual([
      `${ORIGIN}/help-now?in=uk`,
      `${ORIGIN}/`,
      `${ORIGIN}/sheet?mix=oil-etching`,
    ]);
    expect(await worker.ask('/help-now?in=uk')).toBe('/help-now?in=uk');
  });
});
